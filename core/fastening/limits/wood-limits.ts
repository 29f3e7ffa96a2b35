import { dot, leftOf, subtract, unit } from '../../geometry/vector.ts';
import { roundTo } from '../../units/tolerances.ts';
import { intoFrame, turnIntoFrame } from '../corner-frame.ts';
import { memberOf } from '../woods.ts';
import type { EdgedWood, WoodEdge } from '../woods.ts';
import { leanLimit, planeLimit } from './make.ts';
import { coverHeight } from './lean-limits.ts';
import type { PlaceContext } from './place-context.ts';
import type { PlaneLimit } from './types.ts';

/**
 * The screw's part in the front stays in one wood, and clear of the groove along its inner edge. Both ends of
 * that part are held: the level cut at the back of the front, and the disc at the tip. The groove's nearest
 * line is its edge towards the back, because a screw leans away from the panel; a distance d from it, square
 * to the screw, is d √(1 + τ²) measured across the front, so radius and margin grow with it alike.
 */
export function woodLimits(context: PlaceContext, wood: EdgedWood): readonly PlaneLimit[] {
  const { screw, walls, standard } = context;
  const margin = standard.fastening.edgeMargin.value;
  const radius = screw.diameter.value / 2;
  const { depth, behind } = standard.front.groove;
  return wood.edges.flatMap((edge) => {
    const plane = edgePlane(context, edge);
    const held = { ...plane, limit: edge.limit, against: edge.against, least: margin };
    // The tip goes outwards: it comes nearest to edges that it goes to, the other end to those that it leaves.
    const { x, y } = plane.normal;
    const ends: readonly PlaneLimit[] = [
      ...(x < 0 || y < 0
        ? [planeLimit({ ...held, part: { kind: 'slice', along: walls.front, radius } })]
        : []),
      ...(x > 0 || y > 0
        ? [planeLimit({ ...held, part: { kind: 'disc', along: screw.length.value, radius } })]
        : []),
    ];
    if (!edge.groove) return ends;
    const against = `the groove of the ${memberOf(wood.name)}`;
    const groove = planeLimit(
      {
        normal: plane.normal,
        offset: plane.offset + depth.value - margin,
        limit: 'groove',
        against,
        least: margin,
        part: { kind: 'slice', along: walls.front + behind.value, radius: radius + margin },
      },
      leanLimit({
        limit: 'groove',
        against: `${against}, above it`,
        least: margin,
        ...coverHeight(context, behind.value),
      }),
    );
    return [...ends, groove];
  });
}

function edgePlane({ frame }: PlaceContext, { from, to }: WoodEdge): Pick<PlaneLimit, 'normal' | 'offset'> {
  const normal = turnIntoFrame(frame, leftOf(unit(subtract(to, from))));
  return { normal, offset: roundTo(dot(normal, intoFrame(frame, from)), 9) };
}
