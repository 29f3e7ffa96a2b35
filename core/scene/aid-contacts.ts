import type { BoxWalls } from '../fastening/box-walls.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Contact, Jig, Vec3 } from '../jigs/types.ts';
import { inPose } from '../jigs/vec3.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { common, rim } from './flat-blocks.ts';
import { restingFaces } from './resting-faces.ts';
import type { SceneContact, Solid } from './types.ts';
import { AXES, blockOf, centerOf, scale, type Block } from './vec.ts';

interface Touching {
  readonly jig: Jig;
  readonly fit: DrawerFit;
  readonly walls: BoxWalls;
  readonly machine: MachineProfile;
  /** Of the aid, where they are seated. */
  readonly solids: readonly Solid[];
}

/** The contacts of a drill guide or pull template in its seat, no larger than what is touched there. */
export function aidContacts(touching: Touching): readonly SceneContact[] {
  const { jig, solids } = touching;
  return jig.seats.flatMap(({ contacts }) =>
    contacts.flatMap((contact, index) =>
      solids
        .filter(({ id }) => id.replace(/-\d+$/, '') === contact.piece)
        .flatMap((solid) =>
          shapesOf(touching, contact, solid).map((shape, part): SceneContact => ({
            id: `${solid.id}-${index}-${part}`,
            on: contact.on,
            edge: null,
            solid: solid.id,
            shape,
          })),
        ),
    ),
  );
}

function shapesOf(touching: Touching, { on, line }: Contact, solid: Solid): readonly SceneContact['shape'][] {
  if (line === undefined) {
    return on === 'front back'
      ? restingFaces(solid, touching.fit).map(({ shape }) => shape)
      : underside(solid, touching.walls.front);
  }
  const { thickness } = touching.machine.sheet;
  const face = blockOf(line.flatMap((point) => [0, thickness].map((up) => inPose(solid.pose, point, up))));
  const shared = common(face, targetOf(touching, on));
  const flat = AXES.find((axis) => face.max[axis] - face.min[axis] < SAME_LENGTH);
  if (shared === null || flat === undefined) return [];
  const middle = centerOf(
    blockOf(solid.layers.flatMap(({ outline }) => outline.map((p) => inPose(solid.pose, p)))),
  );
  const normal = unit(flat, Math.sign(middle[flat] - face.min[flat]));
  return [{ kind: 'area', outline: rim(shared, normal), holes: [], normal }];
}

/** The flat lower face of a layer that lies on the inside of the box front. */
function underside({ pose, layers }: Solid, height: number): readonly SceneContact['shape'][] {
  return layers.flatMap(({ outline, holes, from, to }): readonly SceneContact['shape'][] => {
    const at = [from, to].find((end) => Math.abs(inPose(pose, { x: 0, y: 0 }, end).z - height) < SAME_LENGTH);
    if (at === undefined) return [];
    const seen = (points: typeof outline) => points.map((point) => inPose(pose, point, at));
    return [{ kind: 'area', outline: seen(outline), holes: holes.map(seen), normal: { x: 0, y: 0, z: 1 } }];
  });
}

/** The block whose side is touched. */
function targetOf({ fit, walls }: Touching, on: Contact['on']): Block {
  const { right, left, bottom, top, side, front, floor, back } = walls;
  switch (on) {
    case 'box side inside':
    case 'box bottom':
      // The sides and the bottom, all that bounds the inside of the box.
      return {
        min: { x: right + side, y: bottom + floor, z: front },
        max: { x: left - side, y: top, z: back },
      };
    case 'box top edge':
      return { min: { x: right, y: bottom, z: 0 }, max: { x: left, y: top, z: front } };
    case 'box front inside':
      return { min: { x: right, y: bottom, z: 0 }, max: { x: left, y: top, z: front } };
    default: {
      const z = on === 'front back' ? 0 : -fit.frontThickness;
      return { min: { x: 0, y: 0, z }, max: { x: fit.frontW, y: fit.frontH, z: 0 } };
    }
  }
}

const unit = (axis: 'x' | 'y' | 'z', sign: number): Vec3 => scale(ALONG[axis], sign || 1);

const ALONG: Readonly<Record<'x' | 'y' | 'z', Vec3>> = {
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
};
