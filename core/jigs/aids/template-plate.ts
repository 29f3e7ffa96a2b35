import { polygon } from '../../geometry/polygon.ts';
import type { Point } from '../../geometry/types.ts';
import { alongArms, ell, ellRabbet } from '../ell.ts';
import { ellJoints } from '../ell-joints.ts';
import { jointKeys, jointPins, roomBetween } from '../joint.ts';
import { lipLabel } from '../lip-label.ts';
import { lipLayers } from '../lip-layers.ts';
import type { Lip } from '../lip.ts';
import { bevelWords } from '../phrases.ts';
import { CRISP_CORNER, DUST_RELIEF, LIP_MIDDLE, LIP_WIDTH, SIGHT, SOFT_CORNER } from '../proportions.ts';
import { roundCorners } from '../round-corners.ts';
import { FLAT, keyPoses, lipPoses, shifted } from '../stack-poses.ts';
import type { BuildContext, Piece, Pin, Seat } from '../types.ts';
import { pullBores } from './pull-bores.ts';
import { templateWords } from './template-labels.ts';
import type { TemplateSetup } from './types.ts';

// All in mm; common practice, no source.

/** Arms of the lips along the edges, from the front's corner. */
const ARM = { usual: 120, least: { x: 75, y: 60 } } as const;

/** Where no lip is, the plate ends this far inside the front's edge, which stays in sight. */
const INSIDE = 3;

/** Wood beyond the outermost hole. */
const BEYOND = 15;

/** Room for the label, and between it and what is round it. */
const LABEL = { width: 60, height: 24 } as const;
const GAP = 5;

/** Clear of the joints' slots along the lips. */
const PAST_SLOTS = LIP_MIDDLE + 8;

/** Sizes of a template at a front's top corner, mm from the corner; or why a front has no room for one. */
export function templateArms({ holes, bore, front }: TemplateSetup) {
  const far = {
    x: Math.max(...holes.map(({ x }) => x)) + bore / 2 + BEYOND,
    y: Math.max(...holes.map(({ y }) => y)) + bore / 2 + BEYOND,
  };
  const beside = Math.min(...holes.map(({ x }) => x)) - bore / 2 - GAP - PAST_SLOTS;
  const isBeside = beside >= LABEL.width;
  const size = {
    x: Math.max(far.x, ARM.least.x + SIGHT, PAST_SLOTS + LABEL.width + GAP),
    y: Math.max(isBeside ? far.y : far.y - BEYOND + GAP + LABEL.height + GAP, ARM.least.y + SIGHT),
  };
  const arms = {
    x: Math.min(ARM.usual, Math.floor(size.x - SIGHT)),
    y: Math.min(ARM.usual, Math.floor(size.y - SIGHT)),
  };
  const label = isBeside
    ? { from: { x: PAST_SLOTS, y: PAST_SLOTS }, to: { x: PAST_SLOTS + beside, y: size.y - GAP } }
    : { from: { x: PAST_SLOTS, y: far.y - BEYOND + GAP }, to: { x: size.x - GAP, y: size.y - GAP } };
  return { size, arms, label, fits: size.x <= front.x && size.y <= front.y };
}

/**
 * A plate on the back of the front at its top left corner, with lips behind the top and the side edge; the right
 * one is its mirror image. Drawn from the corner: x along the top edge, y along the side.
 */
export function templatePlate(
  id: string,
  setup: TemplateSetup,
  lip: Lip,
  context: BuildContext,
): { readonly pieces: readonly Piece[]; readonly pins: readonly Pin[]; readonly seat: Seat } {
  const { machine } = context;
  const { size, arms, label } = templateArms(setup);
  const [plateSize, plateLabel] = [moveBack(size, lip), { from: label.from, to: moveBack(label.to, lip) }];
  const lipArms = { x: arms.x + SIGHT, y: arms.y + SIGHT };
  const { places, holes } = ellJoints(arms, machine);
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
      lipLabel(
        [`${id} LIP`, `TOP ${setup.at.toUpperCase()} CORNER`, ...context.order],
        roomBetween(places, 0, 1),
      ),
    ],
  });
  const words = templateWords(id, setup, context);
  const plate: Piece = {
    name: 'plate',
    copies: 1,
    outline: plateOutline(plateSize, arms),
    holes: [...holes, ...pullBores(setup, lip.setback)],
    pockets: [],
    seatCorners: [],
    labels: [
      {
        title: words.title,
        phrases: [...words.phrases, ...bevelWords(setup, context), ...context.order],
        center: {
          x: (plateLabel.from.x + plateLabel.to.x) / 2,
          y: (plateLabel.from.y + plateLabel.to.y) / 2,
        },
        width: Math.min(160, plateLabel.to.x - plateLabel.from.x),
        height: Math.min(60, plateLabel.to.y - plateLabel.from.y),
      },
    ],
  };
  const past = 2 * machine.reliefRadius + 1;
  return {
    pieces: [plate, ...layers.pieces, ...jointKeys('', lip.layers + 1, machine, id)],
    pins: jointPins(lip.layers + 1, machine),
    seat: {
      frame: 'top corner',
      sets: [],
      poses: [
        { piece: 'plate', pose: FLAT },
        ...lipPoses(layers.layerNames, machine.sheet.thickness),
        ...keyPoses('', places, -lip.depth, machine),
      ].map(({ piece, pose }) => ({
        piece,
        pose: shifted(pose, { x: lip.setback, y: lip.setback }),
      })),
      contacts: [
        { piece: 'plate', on: 'front back' },
        ...alongArms(layers.name, 'front edge', { x: 0, y: 0 }, lipArms, past),
      ],
    },
  };
}

/** The lips meet a bevelled edge inside the face's outline, from which the plate is measured. */
const moveBack = ({ x, y }: Point, { setback }: Lip): Point => ({ x: x - setback, y: y - setback });

/** Over the lips it reaches past the edges, beyond them it ends inside: there one sees the front's edge. */
const plateOutline = ({ x, y }: Point, arms: Point) =>
  roundCorners(
    roundCorners(
      polygon([
        { x: -LIP_WIDTH, y: -LIP_WIDTH },
        { x: arms.x, y: -LIP_WIDTH },
        { x: arms.x, y: INSIDE },
        { x, y: INSIDE },
        { x, y },
        { x: INSIDE, y },
        { x: INSIDE, y: arms.y },
        { x: -LIP_WIDTH, y: arms.y },
      ]),
      [7, 5, 4, 3, 1],
      CRISP_CORNER,
    ),
    [0],
    SOFT_CORNER,
  );
