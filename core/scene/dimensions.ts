import type { DrawerFit } from '../fit/types.ts';
import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Pose, Vec3 } from '../jigs/types.ts';
import type { LengthUnit } from '../order/types.ts';
import { formatLength } from '../units/format-length.ts';
import { inPose } from '../jigs/vec3.ts';
import type { Rect } from './box-place.ts';
import type { EdgeSet } from './choose-seat.ts';
import { solidPoints } from './solid-points.ts';
import type { Dimension, Solid } from './types.ts';
import { dot, scale, UP } from './vec.ts';

/** mm. From the end of the jig to the dimension beside it, and from its top to one above it. */
const CLEAR = 14;

/** What a dimension says: `36.5 mm`, `1 7/16"`. */
export const dimensionText = ({ overhang }: Pick<Dimension, 'overhang'>, unit: LengthUnit): string =>
  formatLength(overhang, unit);

/** What a dimension is called: `Bottom overhang`, `Cabinet-right overhang`. */
export const dimensionName = ({ edge }: Pick<Dimension, 'edge'>): string =>
  `${edge === 'bottom' ? 'Bottom' : edge === 'top' ? 'Top' : `Cabinet-${edge}`} overhang`;

/** mm. Dimensions lie this much off the back of the front, so that they are seen. */
const OFF = 0.5;

/**
 * The overhangs that the jig sets, each lying on the back of the front beside the jig, where the box is next
 * to it; above the jig where there is no such place.
 */
export function sceneDimensions(
  sets: readonly EdgeSet[],
  fit: DrawerFit,
  box: Rect,
  solids: readonly Solid[],
): readonly Dimension[] {
  const points = solids.flatMap(solidPoints);
  return sets.map(({ edge, overhang }) => {
    const frame = edgeFrame(edge, fit.frontW, fit.frontH);
    const along = points.map((point) => fromFrame(frame, point).x);
    const [jigFrom, jigTo] = [Math.min(...along), Math.max(...along)];
    const ends = [
      fromFrame(frame, { x: box.x, y: box.y, z: 0 }).x,
      fromFrame(frame, { x: box.x + box.w, y: box.y + box.h, z: 0 }).x,
    ];
    const [boxFrom, boxTo] = [Math.min(...ends), Math.max(...ends)];
    const free = [jigTo + CLEAR, jigFrom - CLEAR].find((place) => place > boxFrom && place < boxTo);
    const z = free === undefined ? Math.max(...points.map((point) => point.z)) + CLEAR : OFF;
    const place = free ?? (jigFrom + jigTo) / 2;
    const at = (y: number, height: number): Vec3 => inPose(frame, { x: place, y }, height);
    return {
      id: `overhang-${edge}`,
      edge,
      overhang,
      line: [at(0, z), at(overhang, z)],
      side: free === undefined ? UP : scale(frame.u, free > jigTo ? 1 : -1),
      witnesses: [
        [at(0, -fit.frontThickness), at(0, z + CLEAR / 3)],
        [at(overhang, 0), at(overhang, z + CLEAR / 3)],
      ],
    };
  });
}

/** Along and inwards from the middle of an edge. */
function fromFrame({ origin, u, v }: Pose, point: Vec3): { readonly x: number; readonly y: number } {
  const off = { x: point.x - origin.x, y: point.y - origin.y, z: 0 };
  return { x: dot(off, u), y: dot(off, v) };
}
