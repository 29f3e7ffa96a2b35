import { groupBy } from '../../collections/group-by.ts';
import { depthStop } from '../../fastening/depth-stop.ts';
import type { Corner, Fastening, ScrewPlace } from '../../fastening/types.ts';
import type { Point } from '../../geometry/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import { GUIDE_LENGTH } from './guide-layout.ts';
import type { GuidePlace, GuideSetup } from './types.ts';

/**
 * mm. Bores farther than this from the side, or from the end, are left to the template, and so are those that stand
 * up a side: a guide follows the row along the end. Common practice, no source.
 */
const FARTHEST = { fromSide: GUIDE_LENGTH.most - 15, fromEnd: 160 } as const;

/** What one corner of a box asks of a guide. */
export interface CornerNeed {
  readonly corner: Corner;
  readonly setup: GuideSetup;
  readonly places: readonly ScrewPlace[];
  readonly beyond: readonly ScrewPlace[];
}

/**
 * The needs of a drawer's corners; none where it has no screw or no holes. Of drawers that are fastened alike
 * they are the same.
 */
export function cornerNeeds(
  fastening: Fastening,
  { box, fastening: rule }: Pick<ShopStandard, 'box' | 'fastening'>,
): readonly CornerNeed[] {
  const { fit, holes, screw, places } = fastening;
  if (holes === null || screw === null) return [];
  const floor = box.bottom.raised.value + box.bottom.thickness.value;
  const { boreFit, boreLength, bushing } = rule.guide;
  const bit = holes.pilotDiameter;
  const bushed = bushing.value > 0;
  const corners = groupBy(places, ({ corner: { hand, end } }) => `${hand} ${end}`);
  return [...corners.values()].flatMap((row): readonly CornerNeed[] => {
    const sorted = row.toSorted((a, b) => a.index - b.index);
    const reached = sorted.filter(
      ({ along, fromSide, fromEnd }) =>
        along === 'end' && fromSide <= FARTHEST.fromSide && fromEnd <= FARTHEST.fromEnd,
    );
    const [first] = reached;
    if (first === undefined) return [];
    const { corner } = first;
    return [
      {
        corner,
        places: reached,
        beyond: sorted.filter((place) => !reached.includes(place)),
        setup: {
          ...corner,
          places: reached.map((place) => guidePlace(place, depthStop(place, holes, fit, 0), floor)),
          bit,
          bore: bushed ? bushing.value : bit + boreFit.value,
          play: boreFit.value,
          bushed,
          guided: boreLength.value * bit,
          screws: [screw.name],
          boxFront: fit.boxFront,
          room: { x: fit.boxW - 2 * fit.boxSide, y: fit.boxH - floor },
        },
      },
    ];
  });
}

/** A screw's place measured from the faces that a guide registers on; its axis, going up out of the box front. */
function guidePlace(place: ScrewPlace, depth: number, floor: number): GuidePlace {
  const { corner, index, fromSide, fromEnd, direction } = place;
  // In the back view x grows from the cabinet's right side inwards, y from the bottom.
  const inwards: Point = {
    x: corner.hand === 'right' ? 1 : -1,
    y: corner.end === 'bottom' ? 1 : -1,
  };
  return {
    index,
    at: { x: fromSide, y: corner.end === 'bottom' ? fromEnd - floor : fromEnd },
    slope: {
      x: (inwards.x * direction.x) / direction.z || 0,
      y: (inwards.y * direction.y) / direction.z || 0,
    },
    depth,
  };
}
