import { blockOf, type Block } from './block.ts';
import { interlock } from './interlock.ts';
import type { Pausing } from './packer/pausing.ts';
import type { PartShape } from './part-shape.ts';
import type { SheetOptions } from './types.ts';

interface Match {
  readonly first: number;
  readonly second: number;
  readonly block: Block;
  readonly saves: number;
}

/**
 * All copies as blocks, those with a notch in interlocking pairs, the pair that saves most first. A pair that fits
 * on no sheet is not made.
 */
export function* pairUp(
  shapes: readonly PartShape[],
  copies: readonly number[],
  options: SheetOptions,
  fitsSomewhere: (block: Block) => boolean,
): Pausing<readonly Block[]> {
  const left = [...copies];
  const blocks: Block[] = [];
  for (const { first, second, block } of yield* matches(shapes, options)) {
    if (!fitsSomewhere(block)) continue;
    for (;;) {
      const [ofFirst, ofSecond] = [left[first] ?? 0, left[second] ?? 0];
      if (ofFirst < 1 || ofSecond < 1 || (first === second && ofFirst < 2)) break;
      left[first] = ofFirst - 1;
      left[second] = (left[second] ?? 0) - 1;
      blocks.push(block);
    }
  }
  return [...blocks, ...singles(shapes, left)];
}

/** Every copy as a block by itself. */
export const singles = (shapes: readonly PartShape[], copies: readonly number[]): readonly Block[] =>
  shapes.flatMap((shape, index) => Array.from({ length: copies[index] ?? 0 }, () => blockOf(shape)));

function* matches(shapes: readonly PartShape[], options: SheetOptions): Pausing<readonly Match[]> {
  const notched = [...shapes.keys()].filter((index) => (shapes[index]?.cover.length ?? 1) > 1);
  const found: Match[] = [];
  for (const [at, first] of notched.entries()) {
    yield;
    for (const second of notched.slice(at)) {
      const [a, b] = [shapes[first], shapes[second]];
      const block = a === undefined || b === undefined ? null : interlock(a, b, options);
      if (a === undefined || b === undefined || block === null) continue;
      const saves = a.width * a.height + b.width * b.height - block.width * block.height;
      found.push({ first, second, block, saves });
    }
  }
  return found.toSorted((a, b) => b.saves - a.saves || a.first - b.first || a.second - b.second);
}
