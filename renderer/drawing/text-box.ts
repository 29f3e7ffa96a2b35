import type { Point } from '../../core/geometry/types.ts';

/** An upright box on the screen, pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Widths of a character in rem, generously: of words and of figures, in bold at their sizes. */
export const LETTER = 0.6;
export const DIGIT = 0.57;

/** Height of a line of text, rem. */
export const LINE = 1.2;

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

/** A box of text about its middle. */
export const boxAbout = ({ x, y }: Point, w: number, h: number): Box => ({
  x: x - w / 2,
  y: y - h / 2,
  w,
  h,
});
