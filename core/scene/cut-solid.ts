import type { Point } from '../geometry/types.ts';
import type { Pose, Vec3 } from '../jigs/types.ts';
import { cross, inPose } from '../jigs/vec3.ts';
import type { Layer, Solid } from './types.ts';

/** A flat face where a plane cuts a solid. */
export interface CutFace {
  readonly outline: readonly Vec3[];
  readonly holes: readonly (readonly Vec3[])[];
}

/** mm. A plane that lies on a face is taken to be this much farther on: of two sheets that touch it cuts one. */
const ON_A_FACE = 1e-6;

/**
 * Where the plane axis = at (mm) cuts a solid whose pose is square to the axes: its outline where the plane
 * lies along the sheet, and otherwise a face from lower to upper end for each stretch of wood in the plane.
 */
export function cutSolid({ pose, layers }: Solid, axis: 'x' | 'y', at: number): readonly CutFace[] {
  const away = at - pose.origin[axis];
  const through = cross(pose.u, pose.v)[axis];
  if (Math.abs(through) > 0.5)
    return layers.flatMap((layer) => alongSheet(pose, layer, away * through, ON_A_FACE * through));
  const [across, along]: readonly ['x' | 'y', 'x' | 'y'] =
    Math.abs(pose.u[axis]) > 0.5 ? ['x', 'y'] : ['y', 'x'];
  const way = pose[across === 'x' ? 'u' : 'v'][axis];
  const place = away * way;
  const beside = place + ON_A_FACE * way;
  const point = (value: number): Point => (across === 'x' ? { x: place, y: value } : { x: value, y: place });
  return layers.flatMap(({ outline, top = outline, holes, from, to }) => {
    const low = crossings([outline, ...holes], across, along, beside);
    const high = crossings([top, ...holes], across, along, beside);
    return pairs(low).flatMap(([a, b], index): readonly CutFace[] => {
      const [c, d] = pairs(high)[index] ?? [a, b];
      return [
        {
          outline: [
            inPose(pose, point(a), from),
            inPose(pose, point(b), from),
            inPose(pose, point(d), to),
            inPose(pose, point(c), to),
          ],
          holes: [],
        },
      ];
    });
  });
}

function alongSheet(
  pose: Pose,
  { outline, holes, from, to }: Layer,
  height: number,
  on: number,
): readonly CutFace[] {
  if (height + on <= from || height + on >= to) return [];
  const lift = (points: readonly Point[]) => points.map((point) => inPose(pose, point, height));
  return [{ outline: lift(outline), holes: holes.map(lift) }];
}

/** Where closed lines cross a line across = at, in order. */
function crossings(
  rings: readonly (readonly Point[])[],
  across: 'x' | 'y',
  along: 'x' | 'y',
  at: number,
): readonly number[] {
  return rings
    .flatMap((ring) =>
      ring.flatMap((a, index): readonly number[] => {
        const b = ring[(index + 1) % ring.length] ?? a;
        if (a[across] > at === b[across] > at) return [];
        const share = (at - a[across]) / (b[across] - a[across]);
        return [a[along] + share * (b[along] - a[along])];
      }),
    )
    .toSorted((a, b) => a - b);
}

const pairs = (values: readonly number[]): readonly (readonly [number, number])[] =>
  values.flatMap((value, index) => {
    const next = values[index + 1];
    return index % 2 === 0 && next !== undefined ? [[value, next] as const] : [];
  });
