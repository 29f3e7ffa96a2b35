import type { Point } from '../geometry/types.ts';
import { alongArms, ell, ellRabbet } from './ell.ts';
import { ellJoints } from './ell-joints.ts';
import { jointKeys, jointPins, roomBetween } from './joint.ts';
import { lipLabel } from './lip-label.ts';
import { lipLayers } from './lip-layers.ts';
import type { Lip } from './lip.ts';
import { bevelWords, cabinetLeft, overhangText } from './phrases.ts';
import { DUST_RELIEF, HANG_HOLE, LIP_MIDDLE, SIGHT } from './proportions.ts';
import { FLAT, keyPoses, lipPoses, shifted } from './stack-poses.ts';
import type { BuildContext, Label, Piece, Pin, Seat, Setup } from './types.ts';

/** mm. Between a label and the edges round it. */
const WALL = 4;

interface Corner {
  readonly id: string;
  readonly bottom: Setup;
  readonly side: Setup;
  readonly lip: Lip;
  /** Length of the arms along the bottom (x) and the side (y), from the front's corner, mm. */
  readonly arms: Point;
  readonly context: BuildContext;
}

/**
 * The pieces and the seat of a corner fence at the cabinet's right, which the back view has at its left: the
 * lips' faces on x = 0 and y = 0, the arms along +x and +y.
 */
export function cornerPieces({ id, bottom, side, lip, arms, context }: Corner): {
  readonly pieces: readonly Piece[];
  readonly seat: Seat;
  readonly pins: readonly Pin[];
} {
  const { machine } = context;
  const inside = { x: side.overhang - lip.setback, y: bottom.overhang - lip.setback };
  const lipArms = { x: arms.x + SIGHT, y: arms.y + SIGHT };
  const { places, holes } = ellJoints(arms, machine);
  const settings = [
    `BOTTOM ${overhangText(bottom.overhang, context)}`,
    `SIDE ${overhangText(side.overhang, context)}`,
  ];
  const layers = lipLayers({
    id,
    lip,
    suffix: '',
    register: {
      outline: ell(lipArms, { x: 0, y: 0 }),
      holes,
      pockets: lip.relief === 'rabbet' ? [ellRabbet(lipArms, machine.kerf)] : [],
      seatCorners: [{ x: 0, y: 0 }],
    },
    dustOutline: ell(lipArms, { x: -DUST_RELIEF, y: -DUST_RELIEF }),
    labels: [
      lipLabel([`${id} LIP`, ...settings], roomBetween(places, 0, 1)),
      lipLabel([`${side.edge.toUpperCase()} CORNER`, ...context.order], {
        x: (PAST_HANG_HOLE + arms.x * 0.34 - 7.5) / 2,
        width: arms.x * 0.34 - 7.5 - PAST_HANG_HOLE,
      }),
    ],
  });
  const room = labelRoom(inside, arms);
  const plate: Piece = {
    name: 'plate',
    copies: 1,
    outline: ell(arms, inside),
    holes,
    pockets: [],
    seatCorners: [inside],
    labels: [
      {
        title: [id, ...settings].join('  '),
        phrases: [
          'CORNER FENCE',
          `CABINET ${side.edge.toUpperCase()} CORNER`,
          cabinetLeft(room.angle ?? 0),
          ...bevelWords(bottom, context),
          ...context.order,
        ],
        ...room,
      },
    ],
  };
  const poses = [
    { piece: 'plate', pose: FLAT },
    ...lipPoses(layers.layerNames, machine.sheet.thickness),
    ...keyPoses('', places, -lip.depth, machine),
  ];
  const past = 2 * machine.reliefRadius + 1;
  return {
    pieces: [plate, ...layers.pieces, ...jointKeys('', lip.layers + 1, machine, id)],
    pins: jointPins(lip.layers + 1, machine),
    seat: {
      frame: 'corner',
      sets: [
        {
          edges: ['bottom'],
          overhang: bottom.overhang,
          backBevel: bottom.backBevel,
          frontThickness: bottom.frontThickness,
        },
        {
          edges: [side.edge],
          overhang: side.overhang,
          backBevel: side.backBevel,
          frontThickness: side.frontThickness,
        },
      ],
      poses: poses.map(({ piece, pose }) => ({
        piece,
        pose: shifted(pose, { x: lip.setback, y: lip.setback }),
      })),
      contacts: [
        { piece: 'plate', on: 'front back' },
        ...alongArms('plate', 'box', inside, arms, past),
        ...alongArms(layers.name, 'front edge', { x: 0, y: 0 }, lipArms, past),
      ],
    },
  };
}

/** mm. Right of the hole at the corner, with a margin. */
const PAST_HANG_HOLE = LIP_MIDDLE + HANG_HOLE / 2 + 1.5;

/** The wider arm's clear rectangle between the joints and the working edge; on the side arm the text stands. */
function labelRoom(inside: Point, arms: Point): Omit<Label, 'phrases'> {
  const pastSlots = LIP_MIDDLE + 5.5;
  const onBottom = inside.y >= inside.x;
  const [right, top] = onBottom ? [arms.x - WALL, inside.y - WALL / 2] : [inside.x - WALL / 2, arms.y - WALL];
  const center = { x: (pastSlots + right) / 2, y: (pastSlots + top) / 2 };
  const [across, up] = [right - pastSlots, top - pastSlots];
  return onBottom ? { center, width: across, height: up } : { center, width: up, height: across, angle: 90 };
}
