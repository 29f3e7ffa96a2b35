import type { Fastening, ScrewPlace } from '../fastening/types.ts';
import type { StockScrew } from '../rules/fastening-types.ts';
import type { ShopStandard } from '../rules/types.ts';

/** A screw as it is looked at: one that holds, or the nearest miss of one that cannot. */
export interface ShownScrew {
  readonly place: ScrewPlace;
  readonly screw: StockScrew;
  readonly possible: boolean;
  /** What would make it possible; none where it is. */
  readonly cures: readonly string[];
}

/** All screws of a drawer, those that cannot be first. */
export function shownScrews(
  { screw, places, impossible }: Fastening,
  standard: ShopStandard,
): readonly ShownScrew[] {
  const [first] = standard.fastening.stock;
  const drawn = screw ?? first;
  if (drawn === undefined) return [];
  return [
    ...impossible.map(({ nearest, cures, screw: tried }) => ({
      place: nearest,
      screw: tried,
      possible: false,
      cures,
    })),
    ...places.map((place) => ({ place, screw: drawn, possible: true, cures: [] })),
  ];
}
