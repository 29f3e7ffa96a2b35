import type { Edge } from '../../order/types.ts';
import { mmText } from '../../units/mm-text.ts';
import { hangHole } from '../hang-hole.ts';
import { jointHoles, jointKeys, jointPins, keyWidth, type JointPlaces } from '../joint.ts';
import { outsideLimits } from '../limits.ts';
import { bevelSetback } from '../lip.ts';
import { bevelWords, overhangText } from '../phrases.ts';
import { BENCH_CLEARANCE, LARGEST_OVERHANG } from '../proportions.ts';
import { onlySetup } from '../setups.ts';
import { stepOutline } from '../step-outline.ts';
import type { BuildContext, JigKind, Piece, Pose, Seat, Setup } from '../types.ts';

// All in mm; common practice, no source.

/** The most that the face on the box is high: enough to square the box, short of what is fixed to it. */
const FACE = { usual: 30, min: 6 } as const;

/** Total width of the layers, so that the profile stands square to the edge. */
const WIDTH = 18;

const LAYERS = { min: 2, max: 3 } as const;

/** Where the layers are pinned, and where the profile hangs by its nail. */
const PLACES: JointPlaces = [
  { x: -50, y: -8 },
  { x: -12, y: 8 },
  { x: -50, y: 34 },
];
const HANG = { x: -30, y: 36 } as const;

/** Between the joints. */
const LABEL = { center: { x: -37.5, y: 12.2 }, width: 36, height: 31 } as const;

/**
 * Step profile: one flat outline, used standing, whose lip touches the front's edge and whose step touches
 * the box. Both faces are sides of one outline and look the same way, so a wider or narrower cut moves both
 * alike and the step stays right on any laser.
 *
 *        ____
 *       |    \
 *       |      \        |
 *       |  body |       |  box
 *       |       |_______|
 *       |         step
 *       |     ____|____________
 *       |    |       front (face down)
 *       |____|_________________
 *        lip
 */
export const stepProfile: JigKind = {
  name: 'step profile',
  code: 'P',
  registersOn: 'an edge of the front',
  parameters: [
    {
      name: 'overhang',
      words: 'an overhang',
      meaning: "from the front's edge to the box; negative if the box stands proud",
      unit: 'mm',
      min: -20,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'depth',
      words: 'a lip',
      meaning: 'of the lip, as far down as the bench allows',
      unit: 'mm',
      min: 5,
      max: 80,
    },
    {
      name: 'face',
      words: 'a face on the box',
      meaning: 'height of the face that touches the box',
      unit: 'mm',
      min: FACE.min,
      max: FACE.usual,
    },
    {
      name: 'layers',
      words: 'a number of layers',
      meaning: 'glued side by side for width',
      unit: 'pieces',
      ...LAYERS,
    },
  ],
  assembly: 'Glue the profiles face to face, engraved faces alike; pins or keys line them up.',
  use: 'Stand the profile on the back of the front, press its lip flat to the edge, and push the box against the face above it. Move it along the edge to set the other end. Hold it: a narrow step does not stand by itself.',
  refuses(setups, context) {
    const setup = onlySetup(setups);
    const { depth } = parametersOf(setup, context);
    const needed = 2 * context.machine.reliefRadius + 2;
    return depth < needed
      ? `a front of ${mmText(setup.frontThickness)} leaves a lip of ${mmText(depth)}; with a relief of ${mmText(context.machine.reliefRadius)} it needs ${mmText(needed)}`
      : outsideLimits(stepProfile.parameters, parametersOf(setup, context));
  },
  build(id, setups, context) {
    const setup = onlySetup(setups);
    const parameters = parametersOf(setup, context);
    const { depth, face, layers, overhang } = parameters;
    const { machine } = context;
    const setback = bevelSetback(setup, depth);
    const { outline, contacts } = stepOutline({
      reach: overhang - setback,
      depth,
      face,
      relief: machine.reliefRadius,
    });
    const edges = edgesOf(setup);
    const profile: Piece = {
      name: 'profile',
      copies: layers,
      outline,
      holes: [...jointHoles(PLACES, machine), hangHole(HANG)],
      pockets: [],
      seatCorners: [],
      labels: [
        {
          title: `${id}  ${overhangText(overhang, context)}`,
          phrases: [
            'BOX →',
            'STEP PROFILE',
            edges.length > 1 ? 'SIDE EDGE' : `${setup.edge.toUpperCase()} EDGE`,
            ...bevelWords(setup, context),
            ...context.order,
            'FRONT →',
          ],
          ...LABEL,
        },
      ],
    };
    const { backBevel, frontThickness } = setup;
    return {
      id,
      kind: stepProfile.name,
      hand: null,
      parameters,
      pieces: [profile, ...jointKeys('', layers, machine, id)],
      pins: jointPins(layers, machine),
      seats: [
        {
          frame: 'edge',
          sets: [{ edges, overhang, backBevel, frontThickness }],
          poses: [...profilePoses(layers, setback, context), ...keyPoses(layers, setback, context)],
          contacts,
        },
      ],
      sensitivity: {
        kerf: 0,
        sheetThickness: 0,
        why: 'kerf 0: both working faces are sides of one outline and look the same way; thickness 0: the sheet stands across the edge, and the depth of the lip is cut, not stacked',
      },
    };
  },
};

const edgesOf = ({ edge }: Setup): readonly Edge[] =>
  edge === 'bottom' || edge === 'top' ? [edge] : ['left', 'right'];

/** At the bottom the face stays on the box front, behind which the slide's catches are. */
const parametersOf = (setup: Setup, { machine }: BuildContext) => ({
  overhang: setup.overhang,
  depth: setup.frontThickness - BENCH_CLEARANCE,
  face: edgesOf(setup).length > 1 ? FACE.usual : Math.min(FACE.usual, setup.boxReach),
  layers: machine.sheet.thickness * LAYERS.min >= WIDTH ? LAYERS.min : LAYERS.max,
});

/** Sheets stand across the edge: their x inwards, their y out of the back, their thickness along the edge. */
const profilePoses = (layers: number, setback: number, { machine }: BuildContext): Seat['poses'] =>
  Array.from({ length: layers }, (_, layer) => ({
    piece: 'profile',
    pose: {
      origin: { x: (layer - layers / 2) * machine.sheet.thickness, y: setback, z: 0 },
      u: INWARDS,
      v: OUT,
    },
  }));

/** Keys lie along the edge, through all layers. */
function keyPoses(layers: number, setback: number, { machine }: BuildContext): Seat['poses'] {
  if (machine.joint === 'pin') return [];
  const { thickness } = machine.sheet;
  return PLACES.map(({ x, y }, index) => ({
    piece: `key-${keyWidth(index)}`,
    pose: {
      origin: { x: (-layers / 2) * thickness, y: x + setback, z: y + thickness / 2 },
      u: INWARDS,
      v: { x: 1, y: 0, z: 0 },
    },
  }));
}

const INWARDS: Pose['u'] = { x: 0, y: 1, z: 0 };
const OUT: Pose['v'] = { x: 0, y: 0, z: 1 };
