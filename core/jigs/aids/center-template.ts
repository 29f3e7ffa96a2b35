import type { PathContour, RingContour, Vertex } from '../../geometry/types.ts';
import { hookedStrip } from '../hooked-strip.ts';
import type { Lip } from '../lip.ts';
import { bevelWords } from '../phrases.ts';
import { LIP_MIDDLE, SIGHT } from '../proportions.ts';
import type { BuildContext, Piece, Pin, Seat } from '../types.ts';
import { pullBores } from './pull-bores.ts';
import { templateWords } from './template-labels.ts';
import type { TemplateSetup } from './types.ts';

// All in mm; common practice, no source.

/** Wood beyond the outermost hole. */
const BEYOND = 15;

/** The notch that is set to the pencilled line: half its width, and its depth. */
const NOTCH = 3;

/** Room for the label. */
const LABEL = { width: 56, height: 20 } as const;

const SHORTEST = 120;

/** Clear of the joints' slots in the strip over the lip. */
const PAST_SLOTS = LIP_MIDDLE + 8;

/** Length along the top edge and reach down from it of a template on the centre line, mm. */
export function centerTemplateSize({ holes, bore }: TemplateSetup) {
  const across = 2 * (Math.max(...holes.map(({ x }) => Math.abs(x))) + bore / 2 + BEYOND);
  const lowest = Math.max(...holes.map(({ y }) => y));
  const highest = Math.min(...holes.map(({ y }) => y)) - bore / 2;
  // The label stands above the holes where there is room, and below them where not.
  const above = highest - 4 - PAST_SLOTS >= LABEL.height;
  const reach = lowest + bore / 2 + BEYOND + (above ? 0 : LABEL.height);
  return {
    length: Math.max(SHORTEST, across) + 2 * SIGHT,
    reach,
    label: above
      ? { from: PAST_SLOTS, to: highest - 4 }
      : { from: lowest + bore / 2 + 4, to: reach - NOTCH - 3 },
  };
}

/** A strip over the top edge with a notch and a line that are set to the front's centre line. */
export function centerTemplate(
  id: string,
  setup: TemplateSetup,
  lip: Lip,
  context: BuildContext,
): { readonly pieces: readonly Piece[]; readonly pins: readonly Pin[]; readonly seat: Seat } {
  const { length, reach, label } = centerTemplateSize(setup);
  const edge = reach - lip.setback;
  const { pieces, seat, pins } = hookedStrip({
    id,
    length,
    reach: edge,
    lip,
    machine: context.machine,
    boxLength: 0, // no lands: nothing bears on its far edge
    overhang: '',
    kind: 'PULL TEMPLATE',
    notes: [...bevelWords(setup, context), ...context.order],
  });
  const words = templateWords(id, setup, context);
  const [plate, ...others] = pieces;
  if (plate === undefined) throw new RangeError('a template needs a plate');
  const half = (length - 2 * SIGHT) / 2;
  const text = {
    title: words.title,
    phrases: [...words.phrases, ...bevelWords(setup, context), ...context.order],
    center: { x: 0, y: (label.from + label.to) / 2 - lip.setback },
    width: 2 * half - 8,
    height: label.to - label.from,
  };
  return {
    pieces: [
      {
        ...plate,
        outline: notched(plate.outline, edge),
        holes: [...plate.holes, ...pullBores(setup, lip.setback)],
        labels: [text],
        marks: [line(edge - NOTCH - 0.5, edge - NOTCH - 2.5)],
      },
      ...others,
    ],
    pins,
    seat: {
      ...seat,
      sets: [],
      contacts: seat.contacts.filter(({ on }) => on !== 'box'),
    },
  };
}

const line = (from: number, to: number): PathContour => ({
  kind: 'path',
  vertices: [
    { x: 0, y: from, bulge: 0 },
    { x: 0, y: to, bulge: 0 },
  ],
});

/** A V in the middle of the ring's straight side at this height; the side is walked towards -x. */
function notched(ring: RingContour, y: number): RingContour {
  const corner = (x: number, at: number): Vertex => ({ x, y: at, bulge: 0 });
  const notch = [corner(NOTCH, y), corner(0, y - NOTCH), corner(-NOTCH, y)];
  return {
    kind: 'ring',
    vertices: ring.vertices.flatMap((vertex, index, all) => {
      const next = all[(index + 1) % all.length] ?? vertex;
      const along = vertex.bulge === 0 && vertex.y === next.y && vertex.x > NOTCH && next.x < -NOTCH;
      return along && Math.abs(vertex.y - y) < 1e-9 ? [vertex, ...notch] : [vertex];
    }),
  };
}
