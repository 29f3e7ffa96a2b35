import { turnedRect, turnedSize, turnsFor, type Block } from './block.ts';
import type { Rect } from './packer/rect.ts';
import type { PartShape } from './part-shape.ts';
import type { QuarterTurns, SheetOptions } from './types.ts';

/** mm. Float noise of sums of lengths. */
const NOISE = 1e-9;

/** The rectangles that a part takes of its box when it is turned. */
const coverAt = (shape: PartShape, turns: QuarterTurns): readonly Rect[] =>
  shape.cover.map((rect) => turnedRect(rect, shape.width, shape.height, turns));

const moved = (rects: readonly Rect[], x: number, y: number): readonly Rect[] =>
  rects.map((rect) => ({ ...rect, x: rect.x + x, y: rect.y + y }));

const apart = (a: Rect, b: Rect, spacing: number): boolean =>
  a.x + a.width + spacing <= b.x + NOISE ||
  b.x + b.width + spacing <= a.x + NOISE ||
  a.y + a.height + spacing <= b.y + NOISE ||
  b.y + b.height + spacing <= a.y + NOISE;

/** The shifts along one axis at which the second part touches the spacing about an arm of the first, or lines up. */
function shifts(a: readonly Rect[], b: readonly Rect[], axis: 'x' | 'y', spacing: number): readonly number[] {
  const size = axis === 'x' ? 'width' : 'height';
  return [
    0,
    ...a.flatMap((first) =>
      b.flatMap((second) => [
        first[axis] + first[size] + spacing - second[axis],
        first[axis] - spacing - second[axis] - second[size],
        first[axis] + first[size] - second[axis] - second[size],
      ]),
    ),
  ];
}

/** mm². What a box takes on a sheet, a spacing to one side counted in. */
const room = (
  { width, height }: { readonly width: number; readonly height: number },
  spacing: number,
): number => (width + spacing) * (height + spacing);

/**
 * Two parts laid into each other's notches as one block; null if that takes no less room than their two boxes.
 *
 *      ┌──┐┌──────┐    an L and the same L turned by half: arm beside arm,
 *      │  ││  ┌───┤    the spacing kept between them
 *      │  └┴──┘   │
 *      └──────┴───┘
 */
export function interlock(
  first: PartShape,
  second: PartShape,
  options: Pick<SheetOptions, 'spacing' | 'turn' | 'keepUpright'>,
): Block | null {
  const { spacing } = options;
  let best: Block | null = null;
  let least = room(first, spacing) + room(second, spacing);
  const a = first.cover;
  for (const turns of turnsFor(second, options)) {
    const turned = coverAt(second, turns);
    const size = turnedSize(second, turns);
    for (const x of shifts(a, turned, 'x', spacing)) {
      for (const y of shifts(a, turned, 'y', spacing)) {
        const [left, bottom] = [Math.min(0, x), Math.min(0, y)];
        const width = Math.max(first.width, x + size.width) - left;
        const height = Math.max(first.height, y + size.height) - bottom;
        const takes = room({ width, height }, spacing);
        if (takes >= least - NOISE) continue;
        const b = moved(turned, x, y);
        if (!a.every((one) => b.every((other) => apart(one, other, spacing)))) continue;
        least = takes;
        best = {
          members: [
            { shape: first, turns: 0, x: -left, y: -bottom },
            { shape: second, turns, x: x - left, y: y - bottom },
          ],
          width,
          height,
          cover: moved([...a, ...b], -left, -bottom),
        };
      }
    }
  }
  return best;
}
