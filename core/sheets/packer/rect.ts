/** An upright rectangle from its lower left corner. The packer counts in whole steps, see `STEP`. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const areaOf = ({ width, height }: Rect): number => width * height;

const overlaps = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const holds = (outer: Rect, inner: Rect): boolean =>
  outer.x <= inner.x &&
  outer.y <= inner.y &&
  outer.x + outer.width >= inner.x + inner.width &&
  outer.y + outer.height >= inner.y + inner.height;

/**
 * What is left free when a rectangle is taken: all largest free rectangles, which may overlap each other.
 *
 *      ┌───────┐      ┌──┬────┐  beside it, full height
 *      │       │  ->  │██│    │
 *      │       │      ├──┴────┤  above it, full width
 *      └───────┘      └───────┘
 *
 * The rule of MaxRects: J. Jylänki, "A thousand ways to pack the bin" (2010), section 4.
 */
export function without(free: readonly Rect[], taken: Rect): Rect[] {
  const kept: Rect[] = [];
  const cut: Rect[] = [];
  const [right, top] = [taken.x + taken.width, taken.y + taken.height];
  for (const rect of free) {
    if (!overlaps(rect, taken)) {
      kept.push(rect);
      continue;
    }
    const { x, y, width, height } = rect;
    if (taken.x > x) cut.push({ x, y, width: taken.x - x, height });
    if (right < x + width) cut.push({ x: right, y, width: x + width - right, height });
    if (taken.y > y) cut.push({ x, y, width, height: taken.y - y });
    if (top < y + height) cut.push({ x, y: top, width, height: y + height - top });
  }
  // What was whole before lies in nothing new; what was cut may lie in either.
  const whole = kept.length;
  for (const [index, rect] of cut.entries()) {
    let inner = false;
    for (let other = 0; other < whole && !inner; other += 1) {
      const outer = kept[other];
      inner = outer !== undefined && holds(outer, rect);
    }
    for (let other = 0; other < cut.length && !inner; other += 1) {
      const outer = cut[other];
      // Of two that are the same, the first stays.
      inner =
        outer !== undefined &&
        other !== index &&
        holds(outer, rect) &&
        (other < index || !holds(rect, outer));
    }
    if (!inner) kept.push(rect);
  }
  return kept;
}
