import { blockOf, type Block } from './block.ts';
import { interlock } from './interlock.ts';
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
export function pairUp(
  shapes: readonly PartShape[],
  copies: readonly number[],
  options: SheetOptions,
  fitsSomewhere: (block: Block) => boolean,
): readonly Block[] {
  const left = [...copies];
  const blocks: Block[] = [];
  for (const { first, second, block } of matches(shapes, options)) {
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

function matches(shapes: readonly PartShape[], options: SheetOptions): readonly Match[] {
  const notched = [...shapes.keys()].filter((index) => (shapes[index]?.cover.length ?? 1) > 1);
  const found = notched.flatMap((first, at) =>
    notched.slice(at).flatMap((second): readonly Match[] => {
      const [a, b] = [shapes[first], shapes[second]];
      if (a === undefined || b === undefined) return [];
      const block = interlock(a, b, options);
      if (block === null) return [];
      const saves = a.width * a.height + b.width * b.height - block.width * block.height;
      return [{ first, second, block, saves }];
    }),
  );
  return found.toSorted((a, b) => b.saves - a.saves || a.first - b.first || a.second - b.second);
}
