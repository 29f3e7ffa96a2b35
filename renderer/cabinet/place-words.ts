import type { Elevation, GapDimension } from '../../core/elevation/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Projection } from '../drawing/projection.ts';
import { smallGapBox } from '../drawing/small-gap-place.ts';
import { overlap, type Box } from '../drawing/text-box.ts';
import { frontTitle, type TitleLine } from './front-title.ts';
import { gapFigure } from './gap-words.ts';

/** The words and figures of a cabinet that have room on the screen, none over another. */
export interface PlacedWords {
  readonly names: readonly TitleLine[];
  readonly sizes: readonly TitleLine[];
  readonly gaps: readonly GapDimension[];
}

export interface WordsOf {
  readonly elevation: Elevation;
  readonly picked: string | null;
  readonly unit: LengthUnit;
  readonly showGaps: boolean;
  readonly projection: Projection;
  readonly rem: number;
}

/**
 * Gives room to what matters most: overlaps, the gaps of the picked drawer, the names, all other
 * gaps, and the sizes of the fronts last. What is left out is in the list of gaps, and comes with a larger drawing.
 */
export function placeWords({ elevation, picked, unit, showGaps, projection, rem }: WordsOf): PlacedWords {
  const taken: Box[] = [];
  const take = (box: Box): boolean => {
    if (taken.some((other) => overlap(other, box))) return false;
    taken.push(box);
    return true;
  };
  const gaps = (showGaps ? elevation.dimensions : []).map((gap) => {
    const [from, to] = [projection.toScreen(gap.from), projection.toScreen(gap.to)];
    return { gap, box: smallGapBox(from, to, gap.figure, gapFigure(gap, unit), rem) };
  });
  const isFirst = ({ mm, rowIds }: GapDimension): boolean =>
    mm < 0 || (picked !== null && rowIds.includes(picked));
  const first = gaps.filter(({ gap, box }) => isFirst(gap) && take(box));
  const titles = elevation.drawers.flatMap((drawer) => frontTitle(drawer, projection, unit, rem) ?? []);
  const named = titles.filter(({ name }) => take(name.box));
  const others = gaps.filter(({ gap, box }) => !isFirst(gap) && take(box));
  return {
    names: named.map(({ name }) => name),
    gaps: [...first, ...others].map(({ gap }) => gap),
    sizes: named.flatMap(({ size }) => (size !== null && take(size.box) ? [size] : [])),
  };
}
