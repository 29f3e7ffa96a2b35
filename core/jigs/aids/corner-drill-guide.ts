import { rectangle } from '../../geometry/rectangle.ts';
import { mmText } from '../../units/mm-text.ts';
import { hangHole } from '../hang-hole.ts';
import { jointHoles, jointKeys, jointPins, roomBetween } from '../joint.ts';
import { outsideLimits } from '../limits.ts';
import { lipLabel } from '../lip-label.ts';
import { lipLayers } from '../lip-layers.ts';
import { designLip, type Lip } from '../lip.ts';
import { mirrorJig } from '../mirror-jig.ts';
import { DUST_RELIEF } from '../proportions.ts';
import { FLAT, keyPoses, lipPoses } from '../stack-poses.ts';
import type { BuildContext, Contact, Hole, Jig, Piece, Pose } from '../types.ts';
import { boreOf, layerHoles, layersFor } from './bore-stack.ts';
import { guideLabels, guideWords, type GuideText } from './guide-labels.ts';
import { GUIDE_LENGTH, guideLayout, type GuideLayout } from './guide-layout.ts';
import { bottomLayer, topLayer, topLip } from './guide-outlines.ts';
import type { AidKind, GuideSetup } from './types.ts';

/**
 * Corner drill guide: a stack of layers in an inside corner of the box, on the inside face of the box front,
 * against the box's side and its bottom (or hooked over the box front's top edge). Its bores, straight or
 * slanted, guide the bit for the screws of that corner. Handed.
 */
export const cornerDrillGuide: AidKind<GuideSetup> = {
  name: 'corner drill guide',
  code: 'G',
  registersOn: 'an inside corner of the box, on the inside face of its front',
  parameters: [
    {
      name: 'length',
      words: 'a guide',
      meaning: 'along the box front, from the inside face of its side',
      unit: 'mm',
      min: GUIDE_LENGTH.least,
      max: GUIDE_LENGTH.most,
    },
    {
      name: 'thickness',
      words: 'a guide thickness',
      meaning: 'of all layers, from the box front to the face that the depth stop comes against',
      unit: 'mm',
      min: 4,
      max: 90,
    },
    {
      name: 'layers',
      words: 'a number of layers',
      meaning: 'on each other',
      unit: 'pieces',
      min: 2,
      max: 24,
    },
    {
      name: 'bit',
      words: 'a bit',
      meaning: 'diameter of the drill that it guides',
      unit: 'mm',
      min: 1,
      max: 12,
    },
    {
      name: 'angle',
      words: 'an angle in degrees',
      meaning: 'the most that a bore leans from square',
      unit: 'deg',
      min: 0,
      max: 60,
    },
  ],
  assembly:
    'Stack the layers in the order of their numbers, layer 1 lowest, engraved faces up; at a top corner the dust layer and the lip go under layer 1. Pins or keys go in one way only. Glue thinly, keep glue out of the bores, and check with the bit that it runs free. Left and right are a pair; the arrow points to the cabinet’s left.',
  use: 'Set the box on the back of the front, and wipe glue and dust out of the corner that the label names. Lay the guide flat on the inside of the box front, press it against the side and the bottom of the box (at a top corner: hook its lip over the top edge and press it against the side), and clamp it. Set the depth stop against the upper face as the label says, and try it on scrap. Drill with the bit running before it enters, and keep fingers away from under the guide. Take the guide out when the pilot holes are drilled: it is not for the clearance bit.',
  refuses(setup, context) {
    const laid = lay(setup, context);
    return typeof laid === 'string' ? laid : null;
  },
  // A box may have more room than the guide takes.
  builtFrom(setup, context) {
    const laid = lay(setup, context);
    return typeof laid === 'string'
      ? setup
      : { ...setup, room: { x: laid.layout.length, y: laid.layout.band } };
  },
  build(id, setup, context) {
    const laid = lay(setup, context);
    if (typeof laid === 'string') throw new RangeError(`corner drill guide: ${laid}`);
    const { layers, layout, lip, parameters } = laid;
    const { machine } = context;
    const { thickness } = machine.sheet;
    const bored = setup.places.map((place) => {
      const holes = layerHoles(place, setup.bore, layers, thickness);
      return { holes, bore: boreOf(place, setup, holes, thickness) };
    });
    const bores = bored.map(({ bore }) => bore);
    const text: GuideText = { id, setup, layout, bores, layers, thickness: layers * thickness, context };
    const shared = sharedHoles(layout, context);
    const layerOf = setup.end === 'bottom' ? bottomLayer : topLayer;
    const stack = Array.from({ length: layers }, (_, layer): Piece => ({
      name: `layer-${layer + 1}`,
      copies: 1,
      // The lowest one stands back from the corner between box front, side and bottom.
      outline: layerOf(layout, layer === 0).outline,
      holes: [
        ...shared,
        ...bored.flatMap(({ holes }): readonly Hole[] => {
          const contour = holes.contours[layer];
          return contour === undefined ? [] : [{ contour, purpose: 'bore', seatCorners: [] }];
        }),
      ],
      pockets: [],
      seatCorners: [],
      labels: guideLabels(text, layer),
    }));
    const hook = lip === null ? null : hookOf(id, setup, layout, lip, shared, context);
    const allLayers = layers + (lip?.layers ?? 0);
    const registering = layerOf(layout, false);
    const touching = (on: Contact['on'], lines: readonly (typeof registering.onSide)[number][]) =>
      stack.slice(1).flatMap(({ name }) => lines.map((line): Contact => ({ piece: name, on, line })));
    // One hand is built, the other is its mirror image: see `boxCornerFrame`.
    const built: Jig = {
      id,
      kind: cornerDrillGuide.name,
      hand: setup.end === 'bottom' ? 'right' : 'left',
      parameters,
      pieces: [...stack, ...(hook?.pieces ?? []), ...jointKeys('', allLayers, machine, id)],
      pins: jointPins(allLayers, machine),
      seats: [
        {
          frame: 'box corner',
          sets: [],
          poses: [
            ...stack.map(({ name }, layer) => ({ piece: name, pose: raised(layer * thickness) })),
            ...lipPoses(hook?.layerNames ?? [], thickness),
            ...keyPoses('', layout.joints, -(lip?.depth ?? 0), machine),
          ],
          contacts: [
            { piece: 'layer-1', on: 'box front inside' },
            ...touching('box side inside', registering.onSide),
            ...touching('box bottom', registering.onBottom),
            ...(hook?.contacts ?? []),
          ],
        },
      ],
      sensitivity: {
        kerf: 0.5,
        sheetThickness: 0,
        why:
          setup.end === 'bottom'
            ? 'kerf 0.5: the faces that register are cut on one side and the bores all round, so that a cut that takes more brings the bores nearer to side and bottom by half of it, and widens them by all of it; thickness 0: a bore starts at the face of the box front whatever the sheet, only its lean changes with the thickness'
            : 'kerf 0.5: the faces that register are cut on one side and the bores all round, so that a cut that takes more brings the bores nearer to the side, and farther from the top edge because the lip faces the other way, by half of it, and widens them by all of it; thickness 0: a bore starts at the face of the box front whatever the sheet, only its lean changes with the thickness',
      },
      drilling: {
        end: setup.end,
        thickness: layers * thickness,
        bores,
        kerfShift: { x: -0.5, y: setup.end === 'bottom' ? -0.5 : 0.5 },
        words: guideWords(text, thickness),
      },
    };
    return built.hand === setup.hand ? built : mirrorJig(built);
  },
};

interface Laid {
  readonly layers: number;
  readonly layout: GuideLayout;
  /** At a top corner. */
  readonly lip: Lip | null;
  readonly parameters: Readonly<Record<'length' | 'thickness' | 'layers' | 'bit' | 'angle', number>>;
}

/** Everything that a guide is built from, or why there can be none. */
function lay(setup: GuideSetup, { machine }: BuildContext): Laid | string {
  const { places, bit, bore, end } = setup;
  if (places.length === 0) return 'there is no screw to guide a bit for';
  const { thickness } = machine.sheet;
  const layers = layersFor(setup, thickness);
  const steepest = Math.max(...places.map(({ slope }) => Math.hypot(slope.x, slope.y)));
  // Where the ellipse turns tightest, a tool must still get round.
  const tightest = bore / Math.hypot(1, steepest);
  if (machine.kind === 'router' && steepest > 0 && tightest < machine.kerf) {
    return `a leaning bore of ${mmText(bore)} turns as tightly as a hole of ${mmText(tightest)}, and the router’s tool is ${mmText(machine.kerf)} wide; cut the guide with a laser, use a narrower tool, or give the shop standard a bushing of ${mmText(machine.kerf * Math.hypot(1, steepest))} or more`;
  }
  const layout = guideLayout(setup, layers * thickness, machine);
  if (typeof layout === 'string') return layout;
  const parameters = {
    length: layout.length,
    thickness: layers * thickness,
    layers,
    bit,
    angle: (Math.atan(steepest) * 180) / Math.PI,
  };
  const outside = outsideLimits(cornerDrillGuide.parameters, parameters);
  if (outside !== null) return outside;
  if (end === 'bottom') return { layers, layout, lip: null, parameters };
  const edge = { frontThickness: setup.boxFront, backBevel: 0 };
  const lip = designLip(edge, thickness, machine.kind === 'router');
  // The lip hangs over the box front as another does over a front: the front's back is its bench.
  return typeof lip === 'string' ? `over the box front, ${lip}` : { layers, layout, lip, parameters };
}

/** The holes that go through all layers, lip included. */
const sharedHoles = (layout: GuideLayout, { machine }: BuildContext): readonly Hole[] => [
  ...jointHoles(layout.joints, machine),
  hangHole({ x: roomBetween(layout.joints, 0, 1).x, y: layout.jointY }),
];

/** The lip of a guide for a top corner: its layers and what they touch. */
function hookOf(
  id: string,
  { hand }: GuideSetup,
  layout: GuideLayout,
  lip: Lip,
  holes: readonly Hole[],
  { machine, order }: BuildContext,
) {
  const register = topLip(layout, false);
  const tool = machine.kerf;
  const rabbet = rectangle(register.to - register.from + 2 * tool, DUST_RELIEF + tool, {
    x: register.from - tool,
    y: -DUST_RELIEF,
  });
  const layers = lipLayers({
    id,
    lip,
    suffix: '',
    register: {
      outline: register.outline,
      holes,
      pockets: lip.relief === 'rabbet' ? [{ contour: rabbet, depth: DUST_RELIEF }] : [],
      seatCorners: [],
    },
    dustOutline: topLip(layout, true).outline,
    labels: [
      lipLabel(
        [`${id} LIP`, `${hand.toUpperCase()} TOP CORNER`, '↑ TOP EDGE', ...order],
        roomBetween(layout.joints, 1, 2),
      ),
    ],
  });
  return {
    ...layers,
    contacts: register.onTop.map((line): Contact => ({ piece: layers.name, on: 'box top edge', line })),
  };
}

const raised = (z: number): Pose => ({ ...FLAT, origin: { x: 0, y: 0, z } });
