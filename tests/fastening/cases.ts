import type { DrawerFit } from '../../core/fit/types.ts';
import type { FrontConstruction } from '../../core/order/types.ts';
import type { StockScrew } from '../../core/rules/fastening-types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { fitWith, mm, random, STANDARD, standardWith } from './fits.ts';

export interface Case {
  readonly fit: DrawerFit;
  readonly standard: ShopStandard;
  readonly screw: StockScrew;
}

/** A drawer, a shop and a screw made up from a seed; many allow a straight screw, many a slanted one, many none. */
export function anyCase(seed: number): Case {
  const draw = random(seed);
  const pick = <T>(items: readonly T[]): T => {
    const item = items[Math.floor(draw() * items.length)];
    if (item === undefined) throw new RangeError('pick: an empty list');
    return item;
  };
  const thin = draw() < 0.2 ? { thinnest: draw(14, 18) } : {};
  const front: FrontConstruction =
    draw() < 0.3
      ? { kind: 'slab', ...thin }
      : {
          kind: 'five-piece',
          memberWidth: draw(40, 75),
          ...(draw() < 0.5 ? { railWidth: draw(40, 75) } : {}),
          joint: pick(['cope', 'mitre']),
          ...thin,
        };
  const pull =
    draw() < 0.5 ? { pullChoice: { sort: 'bar', centers: draw(60, 260), count: pick([1, 2] as const) } } : {};
  const fit = fitWith({
    overhang: { left: draw(-4, 55), right: draw(-4, 55), bottom: draw(0, 60), top: draw(0, 60) },
    boxW: draw(180, 420),
    boxH: draw(70, 260),
    frontThickness: draw(17, 24),
    boxFront: draw(11, 18),
    boxSide: draw(11, 18),
    bevel: draw() < 0.2 ? draw(1, 5) : 0,
    drawer: { front, ...pull, ...(draw() < 0.2 ? { boxD: draw(250, 500) } : {}) },
  });
  const standard = standardWith(
    {
      bite: mm(draw(6, 13)),
      cover: mm(draw(2, 4)),
      edgeMargin: mm(draw(1, 4)),
      headRoom: mm(draw(0, 2)),
      largestAngle: mm(draw(15, 45)),
      place: { side: mm(draw(10, 50)), height: mm(draw(10, 40)) },
    },
    {
      ...STANDARD,
      front: {
        ...STANDARD.front,
        groove: { depth: mm(draw(5, 11)), behind: mm(draw(4, 8)), width: mm(draw(4, 8)) },
      },
    },
  );
  return { fit, standard, screw: pick(STANDARD.fastening.stock) };
}
