import { depthStop } from '../fastening/depth-stop.ts';
import type { Fastening, ScrewPlace } from '../fastening/types.ts';
import { circle } from '../geometry/circle.ts';
import type { Pose, Vec3 } from '../jigs/types.ts';
import { cross } from '../jigs/vec3.ts';
import type { Rect } from './box-place.ts';
import { polygonOf } from './polygon-of.ts';
import type { Layer, Solid } from './types.ts';
import { dot, ORIGIN, scale } from './vec.ts';

/** mm. How far from its seat a bit or a screw starts, and how much of a bit is seen. */
const WAY = 90;
const BIT = 70;

/** mm. How tall a head is drawn. */
const HEAD = 2;

/** The screws of a drawer and the bits that drill for them, each on its own axis, where the box stands. */
export function screwSolids({ fit, screw, holes, places }: Fastening, box: Rect): readonly Solid[] {
  if (screw === null) return [];
  const shift = { x: box.x - fit.overhang.right, y: box.y - fit.overhang.bottom };
  return places.flatMap((place, index): readonly Solid[] => {
    const origin = { x: place.entry.x + shift.x, y: place.entry.y + shift.y, z: fit.boxFront };
    const pose = { origin, ...acrossAxis(place.direction) };
    const whose = `${place.corner.end} ${place.corner.hand} ${place.index + 1}`;
    const solid = (group: 'bit' | 'screw', name: string, layers: readonly Layer[]): Solid => ({
      id: `${group}-${index + 1}`,
      name: `${name}, ${whose}`,
      group,
      material: group,
      pose,
      layers,
      lines: [],
      apart: ORIGIN,
      ghost: false,
      travel: scale(place.direction, -WAY),
      corner: place.corner,
    });
    const length = screw.length.value;
    return [
      solid('screw', screw.name, [
        round(screw.headDiameter.value, -HEAD, 0),
        round(screw.diameter.value, 0, length),
      ]),
      ...(holes === null
        ? []
        : [solid('bit', 'Bit', [round(holes.pilotDiameter, -BIT, depthStop(place, holes, fit, 0))])]),
    ];
  });
}

const round = (diameter: number, from: number, to: number): Layer => ({
  outline: polygonOf(circle({ x: 0, y: 0 }, diameter / 2)),
  holes: [],
  from,
  to,
});

/** Two directions across an axis, so that the thickness of what has this pose runs along it. */
function acrossAxis(axis: ScrewPlace['direction']): Pick<Pose, 'u' | 'v'> {
  const near: Vec3 = { x: 1, y: 0, z: 0 };
  const along = dot(near, axis);
  const off = { x: near.x - along * axis.x, y: near.y - along * axis.y, z: near.z - along * axis.z };
  const u = scale(off, 1 / Math.sqrt(dot(off, off)));
  return { u, v: cross(axis, u) };
}
