import { circle } from '../../geometry/circle.ts';
import type { Point, RingContour, Vertex } from '../../geometry/types.ts';
import { SHORTEST_SEGMENT } from '../../units/tolerances.ts';
import { jointHoles, jointKeys, keyWidth, type JointPlaces } from '../joint.ts';
import { bevelSetback } from '../lip.ts';
import { bevelWords, EDGE_WORDS, overhangText } from '../phrases.ts';
import { BENCH_CLEARANCE, HANG_HOLE, LARGEST_OVERHANG, SOFT_CORNER } from '../proportions.ts';
import { roundCorners } from '../round-corners.ts';
import { onlySetup } from '../setups.ts';
import type { BuildContext, Contact, JigKind, Pose, Setup } from '../types.ts';
import { mmText } from '../../units/mm-text.ts';

/** mm. Of the body behind the lip's face, and of its top above the back of the front. */
const BODY = 60;
const TOP = 44;

/** mm. The most that the face on the box is high: enough to square the box, short of its slides. */
const FACE = 30;

/** mm. Above the working face the body stands clear of the box. */
const CLEAR = 3;

/** mm. A foot below the back would touch a box that stands proud: it stays this far down. */
const BELOW_BOX = 1.5;

/** mm. The corner between box and front is left free for glue and dust. */
const GLUE_CHAMFER = 1.5;

/** mm. Total width of the layers, so that the profile stands square to the edge. */
const WIDTH = 18;

const LIMITS = { overhang: { min: -20, max: LARGEST_OVERHANG }, layers: { min: 2, max: 3 } } as const;

/**
 * Step profile: one flat outline, used standing, whose lip touches the front's edge and whose step touches
 * the box. Both faces are sides of one outline and look the same way, so a wider or narrower cut moves both
 * alike and the step stays right on any laser.
 *
 *        ________
 *       |        \      |
 *       |         |     |  box
 *       |  body   |_____|
 *       |         |step
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
      meaning: "from the front's edge to the box; negative if the box stands proud",
      unit: 'mm',
      ...LIMITS.overhang,
    },
    {
      name: 'depth',
      meaning: 'of the lip, as far down as the bench allows',
      unit: 'mm',
      min: 5,
      max: 60,
    },
    { name: 'layers', meaning: 'glued side by side for width', unit: 'pieces', ...LIMITS.layers },
  ],
  refuses(setups, { machine }) {
    const { overhang, frontThickness } = onlySetup(setups);
    if (overhang < LIMITS.overhang.min || overhang > LIMITS.overhang.max) {
      return `an overhang of ${mmText(overhang)} is outside ${LIMITS.overhang.min} to ${mmText(LIMITS.overhang.max)}`;
    }
    const depth = frontThickness - BENCH_CLEARANCE;
    const needed = 2 * machine.reliefRadius + 2;
    return depth < needed
      ? `a front of ${mmText(frontThickness)} leaves a lip of ${mmText(depth)}; with a relief of ${mmText(machine.reliefRadius)} it needs ${mmText(needed)}`
      : null;
  },
  build(id, setups, context) {
    const setup = onlySetup(setups);
    const { machine } = context;
    const depth = setup.frontThickness - BENCH_CLEARANCE;
    const setback = bevelSetback(setup, depth);
    const reach = setup.overhang - setback;
    const layers =
      machine.sheet.thickness * LIMITS.layers.min >= WIDTH ? LIMITS.layers.min : LIMITS.layers.max;
    const side = setup.edge === 'bottom' || setup.edge === 'top' ? setup.edge : 'side';
    const profile = outline(setup, reach, depth, machine.reliefRadius);
    const places: JointPlaces = [
      { x: -50, y: -8 },
      { x: -12, y: 10 },
      { x: -50, y: 34 },
    ];
    return {
      id,
      kind: stepProfile.name,
      hand: null,
      parameters: { overhang: setup.overhang, depth, layers },
      pieces: [
        {
          name: 'profile',
          copies: layers,
          outline: profile.outline,
          holes: [
            ...jointHoles(places, machine),
            { contour: circle({ x: -12, y: 34 }, HANG_HOLE / 2), purpose: 'hang', seatCorners: [] },
          ],
          pockets: [],
          seatCorners: [],
          labels: [
            {
              title: `${id}  ${overhangText(setup.overhang, context)}`,
              phrases: [
                'BOX →',
                side === 'side' ? EDGE_WORDS.side : `${side.toUpperCase()} EDGE`,
                ...bevelWords(setup.backBevel),
                ...context.order,
                'FRONT →',
              ],
              center: { x: -37.5, y: 12.7 },
              width: 36,
              height: 32,
            },
          ],
        },
        ...jointKeys('', layers, machine, id),
      ],
      seats: [
        {
          frame: 'edge',
          sets: [
            {
              edges: side === 'side' ? ['left', 'right'] : [side],
              overhang: setup.overhang,
              backBevel: setup.backBevel,
            },
          ],
          poses: [
            ...Array.from({ length: layers }, (_, layer) => ({
              piece: 'profile',
              pose: standing((layer - layers / 2) * machine.sheet.thickness, setback),
            })),
            ...keysThrough(places, layers, context, setback),
          ],
          contacts: profile.contacts,
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

/** The profile in its own coordinates: x inwards from the lip's face, y up from the back of the front. */
function outline(setup: Setup, reach: number, depth: number, relief: number) {
  const face = setup.edge === 'bottom' || setup.edge === 'top' ? Math.min(FACE, setup.boxReach) : FACE;
  const behind = -BODY + Math.min(0, reach);
  const rests = reach > 2 * SHORTEST_SEGMENT;
  const chamfer = rests ? Math.min(GLUE_CHAMFER, reach / 2) : 0;
  const proud = reach < -2 * SHORTEST_SEGMENT;
  const straight = (x: number, y: number): Vertex => ({ x, y, bulge: 0 });
  // The lip's relief is cut into the lip and not under the step, so that a narrow step keeps its bearing.
  const lip: readonly Vertex[] = proud
    ? [straight(0, -depth), straight(0, -BELOW_BOX), straight(reach, -BELOW_BOX)]
    : [straight(0, -depth), { x: 0, y: -2 * relief, bulge: -1 }, straight(0, 0)];
  const step: readonly Vertex[] = rests ? [straight(reach - chamfer, 0), straight(reach, chamfer)] : [];
  const x = proud || rests ? reach : 0;
  const ring: RingContour = {
    kind: 'ring',
    vertices: [
      straight(behind, -depth),
      ...lip,
      ...step,
      straight(x, face),
      straight(x - CLEAR, face + CLEAR),
      straight(x - CLEAR, TOP),
      straight(behind, TOP),
    ],
  };
  const line = (from: Point, to: Point): readonly [Point, Point] => [from, to];
  const contacts: readonly Contact[] = [
    {
      piece: 'profile',
      on: 'front edge',
      line: line({ x: 0, y: -depth }, { x: 0, y: proud ? -BELOW_BOX : -2 * relief }),
    },
    { piece: 'profile', on: 'box', line: line({ x, y: chamfer }, { x, y: face }) },
    ...(rests
      ? [
          {
            piece: 'profile',
            on: 'front back' as const,
            line: line({ x: 0, y: 0 }, { x: reach - chamfer, y: 0 }),
          },
        ]
      : []),
  ];
  const count = ring.vertices.length;
  return { outline: roundCorners(ring, [count - 1, count - 2, 0], SOFT_CORNER), contacts };
}

/** The sheet stands across the edge: its x inwards, its y out of the back, its thickness along the edge. */
const standing = (along: number, setback: number): Pose => ({
  origin: { x: along, y: setback, z: 0 },
  u: { x: 0, y: 1, z: 0 },
  v: { x: 0, y: 0, z: 1 },
});

/** Keys lie along the edge, through all layers. */
function keysThrough(places: JointPlaces, layers: number, { machine }: BuildContext, setback: number) {
  if (machine.joint === 'pin') return [];
  const { thickness } = machine.sheet;
  return places.map(({ x, y }, index) => ({
    piece: `key-${keyWidth(index)}`,
    pose: {
      origin: { x: (-layers / 2) * thickness, y: x + setback, z: y + thickness / 2 },
      u: { x: 0, y: 1, z: 0 },
      v: { x: 1, y: 0, z: 0 },
    },
  }));
}
