import type { Bore, BuildContext, Label } from '../types.ts';
import { degreesText, depthText, sizeText } from './aid-phrases.ts';
import type { GuideLayout } from './guide-layout.ts';
import type { GuideSetup } from './types.ts';

/** mm. Between the two columns of text, and from text to the long edges. */
const GAP = 3;
const MARGIN = 3.5;

export interface GuideText {
  readonly id: string;
  readonly setup: GuideSetup;
  readonly layout: GuideLayout;
  readonly bores: readonly Bore[];
  readonly layers: number;
  /** Of all layers, mm. */
  readonly thickness: number;
  readonly context: BuildContext;
}

/**
 * What is engraved on one layer, the lowest being 0: left, what it is and where it belongs in the stack; right,
 * which way it lies, and on the uppermost layer how it is used.
 */
export function guideLabels(text: GuideText, layer: number): readonly Label[] {
  const { id, setup, layout, layers, thickness, context } = text;
  const { hand, end, bit, screws } = setup;
  const base = (end === 'bottom') === (hand === 'right');
  const bitWords = `BIT ${sizeText(bit, context.unit)}`;
  const lies = [
    base ? '← SIDE' : 'SIDE →',
    end === 'bottom' ? '↓ BOTTOM' : '↓ TOP EDGE',
    // A guide at the top is turned half about, so that its own left is the cabinet's.
    `${end === 'bottom' ? '→' : '←'} CABINET LEFT`,
  ];
  const top = layer === layers - 1;
  const uses = top
    ? [
        bitWords,
        ...leanWords(text),
        ...screws,
        `GUIDE ${sizeText(thickness, context.unit)}`,
        ...stopWords(text),
      ]
    : [bitWords, ...leanWords(text)];
  const middle = (layout.labels.from + layout.labels.to) / 2;
  const width = (layout.labels.to - layout.labels.from - GAP) / 2;
  const room = { width, height: layout.band - 2 * MARGIN };
  const centerAt = (side: -1 | 1) => ({
    x: middle + (side * (width + GAP)) / 2,
    y: layout.band / 2,
  });
  return [
    {
      title: `${id}  LAYER ${layer + 1} OF ${layers}`,
      phrases: [
        'CORNER DRILL GUIDE',
        `${hand.toUpperCase()} ${end.toUpperCase()} CORNER OF BOX`,
        ...context.order,
      ],
      center: centerAt(-1),
      ...room,
    },
    { phrases: [...lies, ...uses], center: centerAt(1), ...room },
  ];
}

/** One setting of the depth stop, or one for each bore where they differ. */
function stopWords({ bores, setup, context }: GuideText): readonly string[] {
  const stops = bores.map(({ stop }) => depthText(stop ?? 0, context.unit));
  const [first] = stops;
  if (first === undefined) return [];
  if (stops.every((stop) => stop === first)) return [`STOP ${first}`];
  return stops.map((stop, bore) => {
    const index = setup.places[bore]?.index ?? bore;
    return index === 0 ? `CORNER STOP ${stop}` : `PLACE ${index} STOP ${stop}`;
  });
}

const leanWords = ({ bores }: GuideText): readonly string[] => {
  const leans = [...new Set(bores.map(({ angle }) => degreesText(angle)))].filter((lean) => lean !== '0°');
  return leans.length === 0 ? [] : [`LEAN ${leans.join(', ')}`];
};

/** What must be known of a guide, in sentences. */
export function guideWords(text: GuideText, thicknessOfSheet: number): readonly string[] {
  const { id, setup, bores, layers, thickness, context } = text;
  const long = (mm: number): string => sizeText(mm, context.unit);
  const fine = (mm: number): string => (mm < 0.001 ? 'less than 0.001 mm' : `${mm.toFixed(3)} mm`);
  const leaning = bores.filter(({ angle }) => angle > 0);
  const most = (of: (bore: Bore) => number, among = bores): number => Math.max(0, ...among.map(of));
  const stopOut = bores.map((bore, index) => {
    const place = setup.places[index]?.index ?? index;
    const name = place === 0 ? 'in the corner' : `for place ${place}`;
    const out = bore.depth ?? 0;
    return `${name} ${depthText(bore.stop ?? 0, context.unit)} from the upper face to the tip, which then stands ${depthText(out, context.unit)} out of the underside`;
  });
  return [
    `${id} is ${long(thickness)} thick, ${layers} layers of ${long(thicknessOfSheet)}, and guides a bit of ${long(setup.bit)} over at least ${Math.min(...bores.map(({ guided }) => guided)).toFixed(1)} mm.`,
    `Set the depth stop with the bit in the guide, its collar against the upper face: ${distinct(stopOut).join('; ')}. Measure the glued stack and add what it is thicker.`,
    ...(setup.bushed
      ? [`Press bushings of ${long(setup.bore)} outer diameter into the bores from the upper face.`]
      : []),
    ...(leaning.length === 0
      ? []
      : [
          `Each layer's hole is all that the slanted cylinder passes in that layer: the ellipse at its lower face, the one at its upper face, and the straight sides between. The bit is touched by layers' edges within ${fine(most(({ edgeGap }) => edgeGap, leaning))} of the true cylinder; the upright walls between stand up to ${fine(most(({ step }) => step, leaning))} off it.`,
        ]),
    `With the play of the bit a hole enters up to ${fine(most(({ play }) => play))} off its place and leans up to ${most(({ tilt }) => tilt).toFixed(2)}° off its angle.`,
  ];
}

const distinct = (texts: readonly string[]): readonly string[] => [...new Set(texts)];
