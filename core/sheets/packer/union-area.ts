import { areaOf, without, type Rect } from './rect.ts';

/** The area that rectangles take together, what several take counted once. */
export function unionArea(rects: readonly Rect[]): number {
  let area = 0;
  for (const [index, rect] of rects.entries()) {
    let fresh: readonly Rect[] = [rect];
    for (const earlier of rects.slice(0, index)) fresh = fresh.flatMap((one) => apart([one], earlier));
    area += fresh.reduce((sum, one) => sum + areaOf(one), 0);
  }
  return area;
}

/** What is left of one rectangle beside another, in pieces that don't overlap. */
function apart(rects: readonly Rect[], taken: Rect): readonly Rect[] {
  const [first, ...others] = rects.flatMap((rect) => without([rect], taken));
  return first === undefined ? [] : [first, ...apart(others, first)];
}
