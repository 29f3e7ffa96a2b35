import type { LengthUnit } from '../order/types.ts';

/**
 * The name of a cut file, with its unit for importers that ask (requirement DXF-3):
 * `cutFileName('B1-plate', 'mm', 'dxf')` is `B1-plate_mm.dxf`.
 */
export const cutFileName = (id: string, unit: LengthUnit, extension: 'dxf' | 'svg'): string =>
  `${id}_${unit}.${extension}`;

/** UTF-16 units and UTF-8 bytes; leaves room for a suffix and for the path around it. */
const LONGEST = { units: 80, bytes: 120 };

/**
 * Devices on Windows, with any extension (Microsoft, "Naming Files, Paths, and Namespaces", and `CONIN$`, whose
 * `$` never comes this far).
 */
const DEVICE = /^(con|prn|aux|nul|(com|lpt)[0-9¹²³]) *(\.|$)/i;

/**
 * A name for a file or folder on any system, made of what somebody calls a thing: what some system refuses
 * becomes `-`, a device of Windows gets a `_`, and where nothing is left it is `order`.
 *
 *     safeName('Smith / kitchen?')  // Smith - kitchen-
 *     safeName('aux')               // _aux
 */
export function safeName(text: string): string {
  const start = text
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}\p{M} _()+=,'&#.-]+/gu, '-')
    .replace(/^[^\p{L}\p{N}_(]+/u, '');
  const name = shortened(start).replace(/[ .]+$/u, '');
  if (name === '') return 'order';
  return DEVICE.test(name) ? `_${name}` : name;
}

/** A name that every system takes: begins with a letter, digit, `_` or `(` and does not end with a dot or a space. */
const NAME = /^[\p{L}\p{N}_(](?:[\p{L}\p{N}\p{M} ._()+=,'&#-]*[\p{L}\p{N}\p{M}_()+=,'&#-])?$/u;

/** Whether a name can stand in a folder on any system: `B1-plate_mm.dxf`. */
export const isFileName = (name: string): boolean => NAME.test(name) && !DEVICE.test(name);

function shortened(text: string): string {
  let [units, bytes] = [0, 0];
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
    if (bytes > LONGEST.bytes || units + character.length > LONGEST.units) break;
    units += character.length;
  }
  return text.slice(0, units);
}

/** Gives a name that it has not given yet, `kitchen-2` for the second `kitchen`; case makes no difference. */
export function distinctNames(): (name: string) => string {
  const taken = new Set<string>();
  const next = new Map<string, number>();
  // Systems that ignore case fold it in different ways; this takes for alike what any of them does.
  const fold = (name: string): string => name.normalize('NFC').toUpperCase().toLowerCase();
  return (name) => {
    const key = fold(name);
    let given = name;
    let number = next.get(key) ?? 2;
    for (; taken.has(fold(given)); number += 1) given = `${name}-${number}`;
    next.set(key, number);
    taken.add(fold(given));
    return given;
  };
}
