import { box, line, point, text } from '../page/draw.ts';
import { listed, paragraph, type Column, type Flow } from '../page/paragraph.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem, PaperPage, TextWidth } from '../page/types.ts';
import { SHEET_SIZES } from '../sheet/sheet-sizes.ts';
import type { PaperWords } from '../words/en.ts';
import { cornerTable } from './corner-table.ts';
import { memberTable } from './member-table.ts';
import { setupNumbers } from './numbers.ts';
import { pictureRow } from './picture-row.ts';
import { overhangsToCheck } from './overhangs-to-check.ts';
import { setupSteps } from './steps.ts';
import type { PaperSetup, SeatPicture } from './types.ts';

export interface SetupPageOf {
  readonly setup: PaperSetup;
  /** How many setups the order has. */
  readonly of: number;
  /** Name and date of the order. */
  readonly order: string;
  readonly pictureOf: SeatPicture;
  readonly words: PaperWords;
  readonly measure: TextWidth;
}

const PAGE = SHEET_SIZES['A4 or letter'];

/** mm */
const MARGIN = 10;
const GUTTER = 7;

/** mm. Sizes of the running text, the first that lets everything fit is taken. */
const SIZES = [3.4, 3.2, 3, 2.8, 2.6, 2.4] as const;

/** mm. The least height that pictures are given. */
const PICTURES = 46;

/**
 * One page for one setup, that prints on A4 and letter alike: its drawers, the pictures, what to do, the
 * numbers, cautions, and what to check. The text is made as large as lets the pictures stay large enough.
 */
export function setupPage(request: SetupPageOf): PaperPage {
  const { setup, of, order, pictureOf, words, measure } = request;
  const inside: Box = { x: MARGIN, y: MARGIN, w: PAGE.width - 2 * MARGIN, h: PAGE.height - 2 * MARGIN };
  const top = inside.y + inside.h;
  const head = [
    text(words.sheets.heading(setup.number, of), point(inside.x, top - 6.5), 7, { bold: true }),
    text(order, point(inside.x + inside.w, top - 5), 3.6, { anchor: 'end' }),
    text(words.sheets.notToScale, point(inside.x + inside.w, top - 9.2), 2.8, { anchor: 'end' }),
  ];
  const table = memberTable(setup, { x: inside.x, top: top - 10, width: inside.w }, words, measure);
  const body = fitBody(setup, inside, table.bottom - PICTURES - 4, words, measure);
  const pictures = { x: inside.x, y: body.top + 4, w: inside.w, h: table.bottom - body.top - 5 };
  return {
    label: words.sheets.label(setup.number),
    ...PAGE,
    items: [
      ...head,
      ...table.items,
      ...pictureRow(setup, pictureOf, pictures, words, measure),
      ...body.items,
    ],
  };
}

/** The text below the pictures, standing on the foot of the page. */
function fitBody(
  setup: PaperSetup,
  inside: Box,
  room: number,
  words: PaperWords,
  measure: TextWidth,
): { readonly items: readonly PaperItem[]; readonly top: number } {
  for (const size of SIZES) {
    const flow = bodyFrom(setup, inside, room, size, words, measure);
    const spare = flow.bottom - inside.y;
    if (spare < 0 && size !== SIZES.at(-1)) continue;
    // What is left over goes to the pictures.
    const top = room - Math.max(0, spare);
    return { items: bodyFrom(setup, inside, top, size, words, measure).items, top };
  }
  throw new RangeError('fitBody: no sizes');
}

function bodyFrom(
  setup: PaperSetup,
  { x, w }: Box,
  top: number,
  size: number,
  words: PaperWords,
  measure: TextWidth,
): Flow {
  const half = (w - GUTTER) / 2;
  const sheet = words.sheets;
  const table = cornerTable(setup, { x, top, width: w, size }, words, measure);
  const below = table.bottom - size * 0.5;
  const left = { x, width: half, size };
  const right = { x: x + half + GUTTER, width: half, size };
  const steps = section(
    sheet.steps,
    setupSteps(setup, words).map(numbered),
    { ...left, top: below },
    measure,
  );
  const numbers = section(
    sheet.numbers,
    setupNumbers(setup, words).map(dashed),
    { ...right, top: below },
    measure,
  );
  const cautions = section(
    sheet.cautions,
    sheet.cautionList.map(dashed),
    steps.bottom > numbers.bottom
      ? { ...left, top: steps.bottom - 2 }
      : { ...right, top: numbers.bottom - 2 },
    measure,
  );
  const foot = Math.min(steps.bottom, numbers.bottom, cautions.bottom) - 2;
  const checks = checkList(setup, { x, width: w, size, top: foot }, words, measure);
  return {
    items: [...table.items, ...steps.items, ...numbers.items, ...cautions.items, ...checks.items],
    bottom: checks.bottom,
  };
}

interface Point {
  readonly mark: string;
  readonly words: string;
}

const numbered = (words: string, index: number): Point => ({ mark: `${index + 1}`, words });
const dashed = (words: string): Point => ({ mark: '–', words });

function section(title: string, list: readonly Point[], column: Column, measure: TextWidth): Flow {
  const heading = paragraph(title, { ...column, size: column.size * 1.25, bold: true }, measure);
  const items: PaperItem[] = [...heading.items];
  let { bottom } = heading;
  for (const { mark, words } of list) {
    const flow = listed(mark, words, { ...column, top: bottom - column.size * 0.2 }, measure);
    items.push(...flow.items);
    bottom = flow.bottom;
  }
  return { items, bottom };
}

/** What must hold before the next drawer, with boxes to tick. */
function checkList(setup: PaperSetup, column: Column, words: PaperWords, measure: TextWidth): Flow {
  const { x, width, size, top } = column;
  const sheet = words.sheets;
  const heading = paragraph(
    sheet.checks,
    { ...column, size: size * 1.25, top: top - 2, bold: true },
    measure,
  );
  const items: PaperItem[] = [line(point(x, top), point(x + width, top), STROKES.rule), ...heading.items];
  let { bottom } = heading;
  for (const check of [sheet.check(overhangsToCheck(setup, words)), sheet.checkSquare, sheet.checkTip]) {
    const flow = listed('', check, { ...column, top: bottom - size * 0.35 }, measure);
    items.push(box({ x, y: bottom - size * 1.4, w: size, h: size }, STROKES.thin), ...flow.items);
    bottom = flow.bottom;
  }
  return { items, bottom };
}
