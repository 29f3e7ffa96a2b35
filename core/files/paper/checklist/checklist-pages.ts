import { drawerName } from '../../../fit/drawer-name.ts';
import { formatLength } from '../../../units/format-length.ts';
import type { PaperSetup, SetupMember } from '../instructions/types.ts';
import { box, line, point, text } from '../page/draw.ts';
import { shorten } from '../page/shorten.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem, PaperPage, TextWidth } from '../page/types.ts';
import { wrap } from '../page/wrap.ts';
import { SHEET_SIZES } from '../sheet/sheet-sizes.ts';
import type { PaperWords } from '../words/en.ts';

const PAGE = SHEET_SIZES['A4 or letter'];

/** mm */
const MARGIN = 10;
const ROW = 7.4;
const HEAD = { title: 12, columns: 11 } as const;
const FOOT = 5;
const SIZE = 2.9;
const LEADING = 1.15;
const TICK = 4.6;

/** mm from the left margin at which the columns begin. */
const AT = {
  drawer: 0,
  template: 55.5,
  setup: 70,
  jigs: 80.5,
  overhangs: 93,
  jig: 142,
  measured: 150,
  fixed: 164.5,
  gaps: 176.5,
} as const;

type Words = 'drawer' | 'template' | 'setup' | 'jigs' | 'overhangs';
const WORDS: readonly Words[] = ['drawer', 'template', 'setup', 'jigs', 'overhangs'];
const TICKS = ['jig', 'measured', 'fixed', 'gaps'] as const;
const COLUMNS = [...WORDS, ...TICKS];

/** The pages of a checklist: a line with boxes to tick for every drawer, each of several alike on its own. */
export function checklistPages(
  setups: readonly PaperSetup[],
  order: string,
  words: PaperWords,
  measure: TextWidth,
): readonly PaperPage[] {
  const rows = setups
    .flatMap((setup) =>
      setup.variants.flatMap(({ name, members }) => members.map((member) => ({ setup, name, member }))),
    )
    .sort((a, b) => a.member.fit.drawer.row - b.member.fit.drawer.row)
    .flatMap(({ setup, name, member }) =>
      Array.from({ length: member.fit.drawer.qty }, (_, index) => cellsOf(setup, name, member, index, words)),
    );
  const inside = { w: PAGE.width - 2 * MARGIN, top: PAGE.height - MARGIN };
  const perPage = Math.floor((inside.top - MARGIN - FOOT - HEAD.title - HEAD.columns) / ROW);
  const count = Math.max(1, Math.ceil(rows.length / perPage));
  return Array.from({ length: count }, (_, index): PaperPage => {
    const first = inside.top - HEAD.title - HEAD.columns;
    const here = rows.slice(index * perPage, (index + 1) * perPage);
    return {
      label: words.checklist.label(index + 1),
      ...PAGE,
      items: [
        text(words.checklist.heading, point(MARGIN, inside.top - 6.5), 7, { bold: true }),
        text(
          `${order}    ${words.checklist.page(index + 1, count)}`,
          point(MARGIN + inside.w, inside.top - 6.5),
          3.6,
          {
            anchor: 'end',
          },
        ),
        ...columnHeads(inside.top - HEAD.title, words, measure),
        rule(first, inside.w),
        text(words.checklist.legend, point(MARGIN, MARGIN + 1), SIZE),
        ...here.flatMap((cells, row) => rowItems(cells, first - row * ROW, inside.w, measure)),
      ],
    };
  });
}

const rule = (y: number, w: number): PaperItem => line(point(MARGIN, y), point(MARGIN + w, y), STROKES.rule);

function columnHeads(top: number, words: PaperWords, measure: TextWidth): readonly PaperItem[] {
  return COLUMNS.flatMap((column, index) => {
    const next = COLUMNS[index + 1];
    const room = (next === undefined ? PAGE.width - 2 * MARGIN : AT[next]) - AT[column] - 1;
    const lines = wrap(words.checklist.columns[column], room, SIZE, measure, true);
    return lines.map((one, at) =>
      text(
        one,
        point(MARGIN + AT[column], top - HEAD.columns + 2 + (lines.length - 1 - at) * SIZE * 1.25),
        SIZE,
        { bold: true },
      ),
    );
  });
}

function rowItems(
  cells: Readonly<Record<Words, string>>,
  top: number,
  width: number,
  measure: TextWidth,
): readonly PaperItem[] {
  const base = top - ROW / 2 - SIZE * 0.35;
  return [
    ...WORDS.flatMap((column, index) => {
      const end = AT[WORDS[index + 1] ?? 'jig'];
      const bold = column === 'drawer';
      const size = column === 'overhangs' || column === 'jigs' ? SIZE * 0.92 : SIZE;
      const room = end - AT[column] - 1.5;
      const [first = '', ...others] = wrap(cells[column], room, size, measure, bold);
      const lines =
        others.length === 0 ? [first] : [first, shorten(others.join(' '), room, size, measure, bold)];
      const up = ((lines.length - 1) * size * LEADING) / 2;
      return lines.map((one, at) =>
        text(one, point(MARGIN + AT[column], base + up - at * size * LEADING), size, { bold }),
      );
    }),
    ...TICKS.map((column) =>
      box({ x: MARGIN + AT[column] + 1.5, y: top - ROW / 2 - TICK / 2, w: TICK, h: TICK }, STROKES.thin),
    ),
    rule(top - ROW, width),
  ];
}

function cellsOf(
  { jigs }: PaperSetup,
  name: string,
  { fit, template }: SetupMember,
  index: number,
  words: PaperWords,
): Readonly<Record<Words, string>> {
  const { drawer, overhang, unit } = fit;
  const length = (mm: number) => formatLength(mm, unit).replace(/ mm$/, '');
  const each = drawer.qty === 1 ? '' : `, ${words.checklist.each(index + 1, drawer.qty)}`;
  return {
    drawer: `${drawerName(drawer)}${each}`,
    template: template ?? words.checklist.none,
    setup: name,
    jigs: jigs.map(({ id }) => id).join(', ') || words.checklist.none,
    overhangs: [overhang.left, overhang.right, overhang.bottom, overhang.top].map(length).join(' · '),
  };
}
