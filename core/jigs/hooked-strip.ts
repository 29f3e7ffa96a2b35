import { rectangle } from '../geometry/rectangle.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { hangHole } from './hang-hole.ts';
import { jointHoles, jointKeys, jointPins, jointPlaces, roomBetween, type JointPlaces } from './joint.ts';
import { lipLabel } from './lip-label.ts';
import { lipLayers } from './lip-layers.ts';
import type { Lip } from './lip.ts';
import {
  CRISP_CORNER,
  DUST_RELIEF,
  LIP_MIDDLE,
  LIP_WIDTH,
  RECESS,
  SIGHT,
  SOFT_CORNER,
} from './proportions.ts';
import { FLAT, keyPoses, lipPoses, shifted } from './stack-poses.ts';
import { strip } from './strip.ts';
import type { Contact, Hole, Piece, Pin, Seat } from './types.ts';

/** Least plate that has room for a hole to hang it by. */
const SHORTEST_WITH_HANG_HOLE = 105;

interface HookedStrip {
  readonly id: string;
  /** Length of the lip along the edge, mm. */
  readonly length: number;
  /** From the lip's face to the plate's working edge, mm. */
  readonly reach: number;
  readonly lip: Lip;
  readonly machine: MachineProfile;
  /** Length of the shortest box along the edge, mm. */
  readonly boxLength: number;
  /** Engraved: the overhang, the kind, and what else must be known. */
  readonly overhang: string;
  readonly kind: string;
  readonly notes: readonly string[];
}

/**
 * A plate that lies on the back of the front, with a lip of sheet layers that hooks behind its edge. Both
 * working faces look the same way, and the layers are held in register by holes: the kerf cancels.
 *
 *          reach      ____________
 *     |<--------->|  |            |
 *      ___________   |    box
 *     |__plate____|__|____________
 *     |lip |      front (face down)
 *     |____|______________________
 */
export function hookedStrip(design: HookedStrip): {
  readonly pieces: readonly Piece[];
  readonly seat: Omit<Seat, 'sets'>;
  readonly pins: readonly Pin[];
} {
  const { id, length, reach, lip, machine } = design;
  const plateLength = length - 2 * SIGHT;
  const places = jointPlaces(plateLength, LIP_MIDDLE);
  const hang: readonly Hole[] =
    plateLength >= SHORTEST_WITH_HANG_HOLE ? [hangHole({ x: -plateLength / 2 + 8, y: LIP_MIDDLE })] : [];
  const holes = [...jointHoles(places, machine), ...hang];
  const back = { y: -LIP_WIDTH, corner: SOFT_CORNER, lands: false };
  // A box that is shorter than the plate would drop between its lands.
  const lands = design.boxLength >= plateLength;
  const plate = strip(plateLength, back, { y: reach, corner: CRISP_CORNER, lands });
  const lips = stripLip({ ...design, holes, places });
  const top = reach - RECESS - 1.5;
  const bottom = LIP_MIDDLE + 5.5;

  return {
    pieces: [
      {
        name: 'plate',
        copies: 1,
        outline: plate.outline,
        holes,
        pockets: [],
        seatCorners: [],
        labels: [
          {
            title: `${id}  ${design.overhang}`,
            phrases: ['↑ BOX', design.kind, ...design.notes, '↓ LIP BEHIND FRONT'],
            center: { x: 0, y: (top + bottom) / 2 },
            width: plateLength - 8,
            height: top - bottom,
          },
        ],
      },
      ...lips.pieces,
      ...jointKeys('', lip.layers + 1, machine, id),
    ],
    pins: jointPins(lip.layers + 1, machine),
    seat: {
      frame: 'edge',
      poses: [
        { piece: 'plate', pose: FLAT },
        ...lipPoses(lips.layerNames, machine.sheet.thickness),
        ...keyPoses('', places, -lip.depth, machine),
      ].map(({ piece, pose }) => ({ piece, pose: shifted(pose, { x: 0, y: lip.setback }) })),
      contacts: [
        { piece: 'plate', on: 'front back' },
        ...plate.high.map((line): Contact => ({ piece: 'plate', on: 'box', line })),
        ...lips.lines.map((line): Contact => ({ piece: lips.name, on: 'front edge', line })),
      ],
    },
  };
}

interface LipDesign extends HookedStrip {
  readonly holes: readonly Hole[];
  readonly places: JointPlaces;
}

/** The layers of a lip whose working face looks along +y at y = 0. */
function stripLip({ id, length, lip, machine, overhang, kind, notes, holes, places }: LipDesign) {
  const back = { y: -LIP_WIDTH, corner: SOFT_CORNER, lands: false };
  const register = strip(length, back, { y: 0, corner: CRISP_CORNER, lands: true });
  const dust = strip(length, back, { y: -DUST_RELIEF, corner: CRISP_CORNER, lands: false });
  const layers = lipLayers({
    id,
    lip,
    suffix: '',
    register: {
      outline: register.outline,
      holes,
      pockets: lip.relief === 'rabbet' ? [{ contour: rabbet(length, machine.kerf), depth: DUST_RELIEF }] : [],
      seatCorners: [],
    },
    dustOutline: dust.outline,
    // Between the second and the third joint, where a lip has no hole.
    labels: [lipLabel([`${id} LIP`, overhang, kind, ...notes], roomBetween(places, 1, 2))],
  });
  return { ...layers, lines: register.high };
}

/** A rebate along the top of the lip's working edge; the tool runs out past the edge and the ends. */
const rabbet = (length: number, tool: number) =>
  rectangle(length + 2 * tool, DUST_RELIEF + tool, { x: -length / 2 - tool, y: -DUST_RELIEF });
