import { isFileName } from '../../core/files/file-name.ts';
import { Refusal } from '../files/refusal.ts';

/** Characters; leaves room for the folder's own path within the 260 of older Windows programs. */
const MAX_PATH = 180;
const MAX_DEPTH = 4;

/** Refuses a path that could lead out of its folder or that some system cannot write: `dxf/B1_mm.dxf` is right. */
export function checkOutputPath(path: string): void {
  const names = path.split('/');
  if (path.length > MAX_PATH || names.length > MAX_DEPTH || !names.every(isFileName)) {
    throw new Refusal(`"${path.slice(0, MAX_PATH)}" is no path within the folder`);
  }
}
