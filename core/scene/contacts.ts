import type { DrawerFit } from '../fit/types.ts';
import { contains } from '../geometry/contains.ts';
import { midpoint } from '../geometry/vector.ts';
import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Contact, Jig, Vec3 } from '../jigs/types.ts';
import { inPose } from '../jigs/vec3.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Edge } from '../order/types.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import type { Rect } from './box-place.ts';
import { DRAWN_DEPTH } from './box-solids.ts';
import type { ChosenSeat } from './choose-seat.ts';
import { common, rim } from './flat-blocks.ts';
import { backInset } from './front-solid.ts';
import { restingFaces } from './resting-faces.ts';
import type { SceneContact, Solid } from './types.ts';
import { AXES, blockOf, UP, type Block } from './vec.ts';

interface Touching {
  readonly jig: Jig;
  readonly chosen: ChosenSeat;
  readonly fit: DrawerFit;
  readonly box: Rect;
  readonly machine: MachineProfile;
  /** Of the jig, where they are seated. */
  readonly solids: readonly Solid[];
}

/** The contacts of a seat as they are on this drawer: no larger than what is touched there. */
export function sceneContacts(touching: Touching): readonly SceneContact[] {
  const { chosen, solids } = touching;
  return chosen.seat.contacts.flatMap((contact, index) =>
    solids
      .filter(({ id }) => id.replace(/-\d+$/, '') === contact.piece)
      .flatMap((solid): readonly SceneContact[] => {
        const shapes =
          contact.line === undefined
            ? restingFaces(solid, touching.fit)
            : [sideShape(touching, contact, contact.line, solid)];
        return shapes.flatMap((found, part) =>
          found === null
            ? []
            : [{ ...found, id: `${solid.id}-${index}-${part}`, on: contact.on, solid: solid.id }],
        );
      }),
  );
}

type Found = Pick<SceneContact, 'edge' | 'shape'>;

/** The upright face that a side of a piece's outline is, as far as it lies on what it touches. */
function sideShape(
  touching: Touching,
  { piece, on }: Contact,
  line: NonNullable<Contact['line']>,
  solid: Solid,
): Found | null {
  const { fit, chosen, jig, machine } = touching;
  const { thickness } = machine.sheet;
  // A rabbet takes the upper part of the side away.
  const rabbets = (jig.pieces.find(({ name }) => name === piece)?.pockets ?? []).filter(({ contour }) =>
    contains(contour, midpoint(...line)),
  );
  const height = thickness - Math.max(0, ...rabbets.map(({ depth }) => depth));
  const face = blockOf(line.flatMap((point) => [0, height].map((up) => inPose(solid.pose, point, up))));
  const edge = on === 'front back' ? null : edgeOf(face, chosen);
  const normal = edge === null ? UP : outwards(edge);
  if (on === 'front edge' && fit.rules.backBevel.value > 0) return deepestLine(touching, face, edge, solid);
  const shared = common(face, targetOf(touching, on, edge));
  return shared === null
    ? null
    : { edge, shape: { kind: 'area', outline: rim(shared, normal), holes: [], normal } };
}

/** On a bevelled edge only the lowest line of the lowest piece of the lip touches. */
function deepestLine({ solids, fit }: Touching, face: Block, edge: Edge | null, solid: Solid): Found | null {
  const lowest = Math.min(
    ...solids
      .filter(({ material }) => material === 'jig')
      .map(({ pose, layers }) =>
        Math.min(
          ...layers.flatMap(({ outline, from, to }) =>
            outline.flatMap((point) => [from, to].map((height) => inPose(pose, point, height).z)),
          ),
        ),
      ),
  );
  if (face.min.z > lowest + SAME_LENGTH || solid.layers.length === 0) return null;
  const line = common(
    { min: { ...face.min, z: lowest }, max: { ...face.max, z: lowest } },
    { min: { x: 0, y: 0, z: -fit.frontThickness }, max: { x: fit.frontW, y: fit.frontH, z: 0 } },
  );
  return line === null ? null : { edge, shape: { kind: 'line', line: [line.min, line.max] } };
}

/** The edge in use that a face looks to or away from. */
function edgeOf(face: Block, { sets }: ChosenSeat): Edge {
  const flat = AXES.find((axis) => face.max[axis] - face.min[axis] < SAME_LENGTH);
  const found = sets.find(({ edge }) => Math.abs(outwards(edge)[flat ?? 'z']) > 0.5);
  return (found ?? sets[0]).edge;
}

/** Out of the front, away from its middle. */
function outwards(edge: Edge): Vec3 {
  const { v } = edgeFrame(edge, 0, 0);
  return { x: -v.x || 0, y: -v.y || 0, z: 0 };
}

/** What a contact touches: the back of the front, a square edge of it, or the outside of the box. */
function targetOf({ fit, box }: Touching, on: Contact['on'], edge: Edge | null): Block {
  const { frontW, frontH, frontThickness } = fit;
  const inset = backInset(fit);
  if (on === 'front back') {
    return {
      min: { x: inset, y: inset, z: 0 },
      max: { x: frontW - inset, y: frontH - inset, z: 0 },
    };
  }
  const whole: Block =
    on === 'front edge'
      ? { min: { x: 0, y: 0, z: -frontThickness }, max: { x: frontW, y: frontH, z: 0 } }
      : {
          min: { x: box.x, y: box.y, z: 0 },
          max: {
            x: box.x + box.w,
            y: box.y + box.h,
            // Under the box, past its front, there is only the lower edge of its sides.
            z: edge === 'bottom' || edge === 'top' ? fit.boxFront : DRAWN_DEPTH,
          },
        };
  return whole;
}
