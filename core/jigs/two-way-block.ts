import type { Point } from '../geometry/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { jointHoles, jointKeys, jointPins, jointPlaces, roomBetween, type JointPlaces } from './joint.ts';
import { LIP_LABEL_HEIGHT } from './lip-label.ts';
import { lipLayers } from './lip-layers.ts';
import type { Lip } from './lip.ts';
import { CRISP_CORNER, DUST_RELIEF, LIP_MIDDLE, LIP_WIDTH, SIGHT, SOFT_CORNER } from './proportions.ts';
import { FLAT, keyPoses, shifted } from './stack-poses.ts';
import { strip } from './strip.ts';
import type { Contact, Label, Piece, Pin, Pose, Seat, Setting } from './types.ts';

/** mm. Each lip's back stands in from the plate's edge, which is a working edge when the block is turned. */
const BACK_INSET = 0.5;

/** One of the two overhangs of a block. */
export interface Way {
  readonly reach: number;
  readonly lip: Lip;
  /** Engraved where it is seen from above while this way is in use. */
  readonly overhang: string;
  readonly notes: readonly string[];
  readonly sets: readonly Setting[];
}

interface TwoWayBlock {
  readonly id: string;
  readonly length: number;
  readonly machine: MachineProfile;
  readonly order: readonly string[];
  /** Length of the shortest box along the edge, mm. */
  readonly boxLength: number;
  /** The way with the larger reach. */
  readonly wide: Way;
  readonly narrow: Way;
}

/**
 * A plate with a lip on either face, each facing the plate's far edge. Turned over about its length, the
 * block sets the other overhang; the lip that then lies on top carries the label that says which.
 *
 *         ______________
 *        |  lip, narrow |        turned over:   ______________
 *     ___|______________|                      |  lip, wide   |____
 *    |______plate_______|                      |______plate_______|
 *    | lip, |                                            | lip,   |
 *    | wide |  <- front's edge here                      | narrow |
 *
 * In the plate's own coordinates the wide lip's face is at y = 0 and looks up the page, the narrow lip's face
 * is at y = narrow reach - lip width and looks down. Both lips are drawn with their faces at y = 0, as
 * seen from outside the block.
 */
export function twoWayBlock(block: TwoWayBlock): {
  readonly pieces: readonly Piece[];
  readonly pins: readonly Pin[];
  readonly seats: readonly Seat[];
} {
  const { id, length, machine, wide, narrow } = block;
  const { thickness } = machine.sheet;
  const plateLength = length - 2 * SIGHT;
  const narrowFace = narrow.reach - LIP_WIDTH;
  const narrowWidth = wide.reach - narrowFace;
  const widePlaces = jointPlaces(plateLength, LIP_MIDDLE);
  const narrowMiddle = narrowFace + (narrowWidth + DUST_RELIEF) / 2;
  const narrowPlaces = jointPlaces(plateLength, narrowMiddle, 'second');
  // A box that is shorter than the plate would drop between its lands.
  const lands = block.boxLength >= plateLength;
  const workingSide = (y: number) => ({ y, corner: CRISP_CORNER, lands });
  const plate = strip(plateLength, workingSide(-LIP_WIDTH), workingSide(wide.reach));

  const wideLip = outsideLip(block, {
    name: 'wide',
    way: wide,
    width: LIP_WIDTH,
    places: movePlaces(widePlaces, (y) => -y),
    says: narrow,
    room: roomBetween(widePlaces, 1, 2),
  });
  const narrowLip = outsideLip(block, {
    name: 'narrow',
    way: narrow,
    width: narrowWidth,
    places: movePlaces(narrowPlaces, (y) => y - narrowFace),
    says: wide,
    room: roomBetween(narrowPlaces, 0, 1),
  });
  const pieces: readonly Piece[] = [
    {
      name: 'plate',
      copies: 1,
      outline: plate.outline,
      holes: [...jointHoles(widePlaces, machine), ...jointHoles(narrowPlaces, machine)],
      pockets: [],
      seatCorners: [],
      labels: [
        // Under the narrow lip, for whoever glues it on.
        {
          phrases: [`${id} PLATE`, `LIP ${wide.overhang} ON THIS FACE`],
          center: { x: 0, y: (LIP_MIDDLE + narrowMiddle) / 2 },
          width: plateLength - 10,
          height: narrowMiddle - LIP_MIDDLE - 11,
        },
        seenLabel(block.order, roomBetween(widePlaces, 1, 2), LIP_MIDDLE, LIP_LABEL_HEIGHT),
      ],
    },
    ...wideLip.pieces,
    ...narrowLip.pieces,
    ...jointKeys('wide-', wide.lip.layers + 1, machine, id),
    ...jointKeys('narrow-', narrow.lip.layers + 1, machine, id),
  ];

  const placed: Seat['poses'] = [
    { piece: 'plate', pose: flat(0, 0) },
    ...wideLip.layerNames.map((piece, layer) => ({ piece, pose: faceDown(0, -layer * thickness) })),
    ...narrowLip.layerNames.map((piece, layer) => ({
      piece,
      pose: flat(narrowFace, (layer + 1) * thickness),
    })),
    ...keyPoses('wide-', widePlaces, -wide.lip.depth, machine),
    ...keyPoses('narrow-', narrowPlaces, 0, machine),
  ];
  const onBox = (line: readonly [Point, Point]): Contact => ({ piece: 'plate', on: 'box', line });
  const rest: Contact = { piece: 'plate', on: 'front back' };
  const seat = (way: Way, contacts: readonly Contact[], place: (pose: Pose) => Pose): Seat => ({
    frame: 'edge',
    sets: way.sets,
    poses: placed.map(({ piece, pose }) => ({ piece, pose: place(pose) })),
    contacts: [rest, ...contacts],
  });

  return {
    pieces,
    pins: [...jointPins(wide.lip.layers + 1, machine), ...jointPins(narrow.lip.layers + 1, machine)],
    seats: [
      seat(wide, [...plate.high.map(onBox), ...wideLip.contacts], (pose) =>
        shifted(pose, { x: 0, y: wide.lip.setback }),
      ),
      seat(narrow, [...plate.low.map(onBox), ...narrowLip.contacts], (pose) =>
        turnedOver(pose, narrow.lip.setback + narrowFace, thickness),
      ),
    ],
  };
}

interface OutsideLip {
  readonly name: string;
  readonly way: Way;
  readonly width: number;
  /** In the lip's own coordinates. */
  readonly places: JointPlaces;
  /** What its outer face says: what the other way sets, for that face looks up then. */
  readonly says: Pick<Way, 'overhang' | 'notes'>;
  /** Where along the block its label has room. */
  readonly room: ReturnType<typeof roomBetween>;
}

/** The layers of one lip, from the plate outwards: its face at y = 0 looking down the page. */
function outsideLip({ id, length, machine }: TwoWayBlock, lip: OutsideLip) {
  const back = { y: lip.width - BACK_INSET, corner: SOFT_CORNER, lands: false };
  const layer = (y: number, lands: boolean) => strip(length, { y, corner: CRISP_CORNER, lands }, back);
  const register = layer(0, true);
  const middle = (lip.width + DUST_RELIEF) / 2;
  const layers = lipLayers({
    id,
    lip: lip.way.lip,
    suffix: `-${lip.name}`,
    register: {
      outline: register.outline,
      holes: jointHoles(lip.places, machine),
      pockets: [],
      seatCorners: [],
    },
    dustOutline: layer(DUST_RELIEF, false).outline,
    labels: [
      {
        ...seenLabel(
          [`${id} SIDE SPACER`, '↑ BOX', '↓ FRONT', ...lip.says.notes],
          lip.room,
          middle,
          lip.width - 6,
        ),
        title: lip.says.overhang,
      },
    ],
  });
  return {
    ...layers,
    contacts: register.low.map((line): Contact => ({ piece: layers.name, on: 'front edge', line })),
  };
}

const movePlaces = ([a, b, c]: JointPlaces, move: (y: number) => number): JointPlaces => [
  { x: a.x, y: move(a.y) },
  { x: b.x, y: move(b.y) },
  { x: c.x, y: move(c.y) },
];

const seenLabel = (
  phrases: readonly string[],
  { x, width }: ReturnType<typeof roomBetween>,
  y: number,
  height: number,
): Label => ({ phrases, center: { x, y }, width, height });

const flat = (y: number, z: number): Pose => ({ ...FLAT, origin: { x: 0, y, z } });

const faceDown = (y: number, z: number): Pose => ({ ...flat(y, z), v: { x: 0, y: -1, z: 0 } });

/** Half a turn about the block's length: y becomes middle - y, and what lay above the plate lies below. */
function turnedOver(pose: Pose, middle: number, thickness: number): Pose {
  const { origin, u, v } = pose;
  return {
    origin: { x: origin.x, y: middle - origin.y, z: thickness - origin.z },
    u: { x: u.x, y: -u.y || 0, z: -u.z || 0 },
    v: { x: v.x, y: -v.y || 0, z: -v.z || 0 },
  };
}
