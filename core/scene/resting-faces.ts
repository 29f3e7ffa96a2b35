import type { DrawerFit } from '../fit/types.ts';
import { intersection } from '../geometry/boolean.ts';
import { contains } from '../geometry/contains.ts';
import { signedArea } from '../geometry/measure.ts';
import { polygon } from '../geometry/polygon.ts';
import { rectangle } from '../geometry/rectangle.ts';
import { clockwise, counterClockwise } from '../geometry/orient.ts';
import { inPose } from '../jigs/vec3.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { backInset } from './front-solid.ts';
import { polygonOf } from './polygon-of.ts';
import type { SceneContact, Solid } from './types.ts';
import { UP } from './vec.ts';

/** The flat face of a plate that rests on the back of the front, as far as there is front below it. */
export function restingFaces(
  { pose, layers }: Solid,
  fit: DrawerFit,
): readonly Pick<SceneContact, 'edge' | 'shape'>[] {
  const inset = backInset(fit);
  const back = rectangle(fit.frontW - 2 * inset, fit.frontH - 2 * inset, { x: inset, y: inset });
  return layers.flatMap(({ outline, holes, from, to }) => {
    const height = [from, to].find((end) => Math.abs(inPose(pose, { x: 0, y: 0 }, end).z) < SAME_LENGTH);
    if (height === undefined) return [];
    const seen = (points: typeof outline) => polygon(points.map((point) => inPose(pose, point, height)));
    const plate = [counterClockwise(seen(outline)), ...holes.map((hole) => clockwise(seen(hole)))];
    const area = intersection(plate, [back]).value;
    const flat = (contour: (typeof area)[number]) => polygonOf(contour).map(({ x, y }) => ({ x, y, z: 0 }));
    const isOutline = (contour: (typeof area)[number]) => signedArea(contour) > 0;
    return area.filter(isOutline).map((rim) => ({
      edge: null,
      shape: {
        kind: 'area' as const,
        outline: flat(rim),
        holes: area
          .filter((hole) => !isOutline(hole))
          .map(flat)
          .filter(([corner]) => corner !== undefined && contains(rim, corner)),
        normal: UP,
      },
    }));
  });
}
