import { depthStop } from '../fastening/depth-stop.ts';
import type { Fastening } from '../fastening/types.ts';
import type { Vec3 } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import type { Rect } from './box-place.ts';
import { bitSizes } from '../units/bit-sizes.ts';
import { formatLength } from '../units/format-length.ts';
import type { LengthUnit } from '../units/unit.ts';
import type { Arrow, Step } from './types.ts';
import { ORIGIN, scale, UP } from './vec.ts';

/** mm. How far away things come from and go to. */
const WAY = 90;

/** mm. Length of the arrows that stand for a tool. */
const TOOL = 60;

export interface StepsOf {
  readonly edges: readonly Edge[];
  /** Out of the front, away from the box, past the edges in use. */
  readonly outwards: Vec3;
  readonly box: Rect;
  readonly boxFront: number;
  /** The jig also rests on the back of the front. */
  readonly rests: boolean;
  /** Null where no screws are known. */
  readonly fastening: Fastening | null;
  /** Of lengths in the words. */
  readonly unit: LengthUnit;
}

/** The use of a jig, step by step. */
export function useSteps({
  edges,
  outwards,
  box,
  boxFront,
  rests,
  fastening,
  unit,
}: StepsOf): readonly Step[] {
  const named = edges.map(edgeWords).join(' and ');
  const [noun, is] = edges.length === 1 ? ['edge', 'lip'] : ['edges', 'lips'];
  const away = scale(outwards, WAY);
  const touching = rests ? (['front edge', 'front back'] as const) : (['front edge'] as const);
  const all = ['front', 'jig', 'box'] as const;
  const screwed = fastening !== null && fastening.screw !== null && fastening.places.length > 0;
  return [
    {
      id: 'front',
      title: 'Place front',
      words: `Lay the front face down on a clean, soft, flat bench. The cabinet's left is now on your right: turn the front until the arrow agrees.`,
      shown: ['front'],
      moves: { front: { from: scale(UP, WAY), to: ORIGIN } },
      touching: [],
      tools: [],
    },
    {
      id: 'seat',
      title: 'Seat jig',
      words: `Hook the ${is} behind the ${named} ${noun} and push until the whole ${is === 'lip' ? 'lip touches' : 'length of both lips touches'}. ${rests ? 'The plate lies flat on the back.' : 'Hold the jig upright.'} It must not touch the bench.`,
      shown: ['front', 'jig'],
      moves: { jig: { from: away, to: ORIGIN } },
      touching,
      tools: [],
    },
    {
      id: 'box',
      title: 'Set box',
      words: `Stand the box on the back of the front, its front down, and slide it against the jig until it touches along the whole face.`,
      shown: all,
      moves: {
        box: { from: { ...scale(outwards, -WAY / 3), z: WAY }, to: ORIGIN },
      },
      touching: [...touching, 'box'],
      tools: [],
    },
    {
      id: 'drill',
      title: 'Drill',
      words: screwed
        ? `Clamp the box to the front. ${drillWords(fastening, unit)}`
        : 'Clamp the box to the front. With the depth stop set, drill the pilot holes from inside the box. The arrows show which way to drill, not where: keep to your places for the screws.',
      shown: screwed ? [...all, 'bit'] : all,
      moves: {},
      ...(screwed ? { sendsIn: 'bit' as const } : {}),
      touching: [...touching, 'box'],
      tools: screwed ? [] : toolArrows('Drill', box, boxFront),
    },
    {
      id: 'drive',
      title: 'Drive',
      words: `Drive the screws${screwed ? `, ${fastening.places.length} of ${fastening.screw.name},` : ''} from inside the box until they are snug. Check that the box still touches the jig.`,
      shown: screwed ? [...all, 'screw'] : all,
      moves: {},
      ...(screwed ? { sendsIn: 'screw' as const } : {}),
      touching: [...touching, 'box'],
      tools: screwed ? [] : toolArrows('Screw', box, boxFront),
    },
    {
      id: 'lift',
      title: 'Lift off',
      words: `Slide the jig straight out past the ${named} ${noun}, away from the box.`,
      shown: screwed ? [...all, 'screw'] : all,
      moves: { jig: { from: ORIGIN, to: away } },
      touching: [],
      tools: [],
    },
  ];
}

/** How many holes, with which bit, how deep and how far they lean; bits as a shop asks for them. */
function drillWords({ fit, places, holes }: Fastening, unit: LengthUnit): string {
  const [first] = places;
  if (holes === null || first === undefined) return '';
  const lean = Math.max(...places.map(({ angle }) => angle));
  const stop = formatLength(Math.min(...places.map((place) => depthStop(place, holes, fit, 0))), unit);
  const pilot = bitSizes(holes.pilotDiameter, unit).join(' or ');
  const leaning = lean > 0 ? ` They lean outwards by up to ${lean}°: use the corner drill guide.` : '';
  return `Drill ${places.length} pilot holes of ${pilot} from inside the box, the depth stop ${stop} from the tip and the thickness of a guide more.${leaning}`;
}

/** Two arrows down onto the box front, at the quarters of its width. */
const toolArrows = (text: string, box: Rect, boxFront: number): readonly Arrow[] =>
  [0.25, 0.75].map((part) => {
    const foot = { x: box.x + part * box.w, y: box.y + box.h / 2, z: boxFront };
    return { text, line: [{ ...foot, z: boxFront + TOOL }, foot] };
  });

/** What an edge is called: `bottom`, `cabinet's left`. */
const edgeWords = (edge: Edge): string => (edge === 'left' || edge === 'right' ? `cabinet's ${edge}` : edge);
