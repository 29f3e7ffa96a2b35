import type { Point } from '../geometry/types.ts';
import { coordinate } from './numbers.ts';

/** One group of a DXF file: its code, and its value as written. */
export type Tag = readonly [code: number, value: string];

export const text = (code: number, value: string): Tag => [code, value];

/** A whole number: a flag, a count, a colour. */
export const whole = (code: number, value: number): Tag => [code, String(Math.trunc(value))];

/** A length or coordinate. */
export const real = (code: number, value: number): Tag => [code, coordinate(value)];

/** A point of the drawing plane; x has the code, y the code 10 higher, z (0) 20 higher. */
export const point = (code: number, { x, y }: Point): readonly Tag[] => [
  real(code, x),
  real(code + 10, y),
  real(code + 20, 0),
];

/** Groups that are read as one line, to keep a long record short. */
export const row = (...tags: readonly Tag[]): readonly Tag[] => tags;

/** Groups as the text of a file: the code, padded to three places, and the value on a line each. */
export const fileText = (tags: readonly Tag[]): string =>
  tags.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');

/** `SECTION` to `ENDSEC` around its groups. */
export const section = (name: string, tags: readonly Tag[]): readonly Tag[] => [
  text(0, 'SECTION'),
  text(2, name),
  ...tags,
  text(0, 'ENDSEC'),
];
