import type { LengthUnit } from '../../../order/types.ts';
import { formatSize } from '../../../units/format-size.ts';
import { drawerName } from '../../../fit/drawer-name.ts';
import { arrow, point } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, Note, TextWidth } from '../page/types.ts';
import { bitText } from '../bit-text.ts';
import type { PaperWords } from '../words/en.ts';
import { foldNotes } from './fold-notes.ts';
import { overhangLabels, type Labelled } from './overhang-labels.ts';
import { placeBlock } from './place-block.ts';
import { pullBoxes } from './pull-marks.ts';
import { screwBoxes } from './screw-marks.ts';
import { leanLabels } from './lean-labels.ts';
import { templateGeometry } from './template-geometry.ts';
import { blockSize, drawBlock, type BlockLine } from './text-block.ts';
import type { Template } from './types.ts';

export interface NotesOf {
  readonly template: Template;
  /** Name and date of the order. */
  readonly order: string;
  /** What the pages show, so that words are not cut by their edges. */
  readonly rooms: readonly Box[];
  readonly words: PaperWords;
  readonly measure: TextWidth;
}

/** How many drawers are named on a template before it only says how many more there are. */
const NAMED = 3;

/** mm. Between words and what they stand next to. */
const AIR = 7;

/** mm. Height of the arrow to the cabinet's left, above its words. */
const ARROW = 12;

/** All words of a template, each where nothing else is, with the lines that measure the overhangs. */
export function templateNotes({ template, order, rooms, words, measure }: NotesOf): Labelled {
  const { fit, fastening } = template;
  const { box, back, strip } = templateGeometry(fit);
  const marks = fastening === null ? [] : [...screwBoxes(fastening), ...pullBoxes(fastening)];
  const overhangs = overhangLabels(fit, marks, rooms, words, measure);
  const side = fit.boxSide + 3;
  const region = { x: box.x + side, y: box.y + AIR, w: box.w - 2 * side, h: box.h - 2 * AIR };
  const small: readonly Note[] = [
    ...overhangs.notes,
    ...(fastening === null ? [] : leanLabels(fastening, words, measure)),
    ...(strip > 0 ? foldNotes(back, strip, rooms, words, measure) : []),
  ];
  const blocks = [
    { lines: titleLines(template, order, words), from: 'left', head: 0 },
    { lines: handedLines(words), from: 'right', head: ARROW },
    { lines: markLines(template, fit.unit, words), from: 'right', head: 0 },
  ] as const;
  const notes = [...small];
  for (const { lines, from, head } of blocks) {
    const taken = [...marks, ...notes.map((note) => note.box)].map(spread);
    const size = blockSize(lines, measure);
    const placed = placeBlock({ w: size.w, h: size.h + head }, region, taken, rooms, from);
    if (placed === null) continue;
    const { box: at, scale } = placed;
    const arrowAt = at.y + at.h - (head * scale) / 2;
    notes.push({
      box: at,
      items: [
        ...drawBlock(lines, { ...at, h: at.h - head * scale }, scale),
        ...(head === 0
          ? []
          : arrow(point(at.x, arrowAt), point(at.x + at.w, arrowAt), 6 * scale, STROKES.strong)),
      ],
    });
  }
  return { lines: overhangs.lines, notes };
}

const spread = ({ x, y, w, h }: Box): Box => ({ x: x - 2, y: y - 2, w: w + 4, h: h + 4 });

function titleLines({ id, fit, users }: Template, order: string, words: PaperWords): readonly BlockLine[] {
  const names = users.map(({ drawer }) => words.template.drawer(drawerName(drawer), drawer.qty));
  const shown = names.length > NAMED ? names.slice(0, NAMED - 1) : names;
  return [
    { text: id, size: 9, bold: true },
    ...shown.map((name) => ({ text: name, size: 4.4, bold: true })),
    ...(shown.length < names.length
      ? [{ text: words.template.more(names.length - shown.length), size: 4.4, bold: true }]
      : []),
    { text: order, size: 3.4 },
    { text: words.template.front(formatSize(fit.frontW, fit.frontH, fit.unit)), size: 3.4 },
    { text: words.template.box(formatSize(fit.boxW, fit.boxH, fit.unit)), size: 3.4 },
    ...(fit.rules.backBevel.value === 0
      ? []
      : [{ text: words.template.bevel(fit.rules.backBevel.value), size: 3.4 }]),
  ];
}

/** What the marks mean. */
function markLines({ fit, fastening }: Template, unit: LengthUnit, words: PaperWords): readonly BlockLine[] {
  const clear = fastening?.holes?.clearanceDiameter ?? 0;
  const lines = [
    ...(fastening === null || fastening.places.length === 0
      ? [words.template.noScrews]
      : [
          words.template.cross(
            fastening.holes === null ? null : bitText(fastening.holes.pilotDiameter, unit, words),
            clear > 0 ? bitText(clear, unit, words) : null,
          ),
          words.template.circle(fastening.screw?.name ?? null),
        ]),
    ...(fastening === null || fastening.pullHoles.centers.length === 0
      ? []
      : [words.template.pull(bitText(fastening.pullHoles.diameter, unit, words))]),
    ...words.template.lines(fit.rules.backBevel.value !== 0),
  ];
  return lines.map((line) => ({ text: line, size: 3.2 }));
}

const handedLines = (words: PaperWords): readonly BlockLine[] =>
  words.template.handed.map((line, index) =>
    index === 0 ? { text: line, size: 7, bold: true } : { text: line, size: 3.4 },
  );
