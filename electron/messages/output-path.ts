import { Refusal } from '../files/refusal.ts';

/** A name that every system takes: begins with a letter, digit, `_` or `(` and does not end with a dot or a space. */
const NAME = /^[\p{L}\p{N}_(](?:[\p{L}\p{N}\p{M} ._()+=,'&#-]*[\p{L}\p{N}\p{M}_()+=,'&#-])?$/u;

/** Names of devices on Windows, with any extension. From memory. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** Characters; leaves room for the folder's own path within the 260 of older Windows programs. */
const MAX_PATH = 180;
const MAX_DEPTH = 4;

/** Whether a name can stand in a folder on any system: `B1-plate_mm.dxf`. */
export const isFileName = (name: string): boolean => NAME.test(name) && !DEVICE.test(name);

/** Refuses a path that could lead out of its folder or that some system cannot write: `dxf/B1_mm.dxf` is right. */
export function checkOutputPath(path: string): void {
  const names = path.split('/');
  if (path.length > MAX_PATH || names.length > MAX_DEPTH || !names.every(isFileName)) {
    throw new Refusal(`"${path.slice(0, MAX_PATH)}" is no path within the folder`);
  }
}

/** A folder's name made of what an order is called: what no system takes becomes `-`. */
export function folderName(suggested: string): string {
  const name = suggested
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}\p{M} _()+=,'&#.-]+/gu, '-')
    .replace(/^[^\p{L}\p{N}_(]+/u, '')
    .slice(0, 80)
    .replace(/[ .]+$/u, '');
  return isFileName(name) ? name : 'jigs';
}
