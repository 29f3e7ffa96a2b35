import { randomFrom } from '../../core/sheets/packer/random.ts';
import type { RectangleItem } from '../../core/sheets/pack-rectangles.ts';

/** Least and largest length and width of a kind of jig part, mm, and its share; common practice, no source. */
const KINDS = [
  { share: 0.3, length: [120, 300], width: [30, 80] }, // strips and step profiles
  { share: 0.2, length: [120, 300], width: [18, 50] }, // lips
  { share: 0.38, length: [110, 160], width: [95, 160] }, // boxes of corner fences
  { share: 0.12, length: [40, 120], width: [30, 80] }, // spacer blocks and keys
] as const;

/** A set of 100 rectangles of the sizes that jig parts have, in tenths of a millimetre. */
function jigLike(set: number): readonly RectangleItem[] {
  const random = randomFrom(0x6a69 + set);
  const between = ([least, most]: readonly [number, number]): number =>
    Math.round((least + (most - least) * random()) * 10) / 10;
  return Array.from({ length: 100 }, (): RectangleItem => {
    let at = random();
    const kind = KINDS.find(({ share }) => (at -= share) < 0) ?? KINDS[0];
    return { width: between(kind.length), height: between(kind.width), mayTurn: true };
  });
}

export const JIG_SETS: readonly (readonly RectangleItem[])[] = Array.from({ length: 12 }, (_, set) =>
  jigLike(set),
);
