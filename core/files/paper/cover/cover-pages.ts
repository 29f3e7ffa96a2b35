import { line, point, text } from '../page/draw.ts';
import { listed, paragraph, type Flow } from '../page/paragraph.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem, PaperPage, TextWidth } from '../page/types.ts';
import { usersText } from '../template/users-text.ts';
import type { DrawnTemplate } from '../template/draw-template.ts';
import type { PageArea } from '../sheet/page-area.ts';
import { sheetFrame, type FrameOf } from '../sheet/sheet-frame.ts';
import { pageName } from '../tiles/tile-page.ts';
import type { PaperWords } from '../words/en.ts';

/** mm */
const SIZE = 3.5;

/** The first pages: what to do, and which drawers use which template. */
export function coverPages(
  drawn: readonly DrawnTemplate[],
  sheet: string,
  frame: Omit<FrameOf, 'id' | 'free'>,
): readonly PaperPage[] {
  const { area, words, measure, about } = frame;
  const pages = drawn.reduce((sum, { layout }) => sum + layout.tiling.tiles.length, 0);
  const intro = introduction(area, about, words.templates.about(sheet, drawn.length, pages), words, measure);
  const bodies: { items: PaperItem[]; top: number }[] = [{ items: [...intro.items], top: intro.bottom }];
  const { window } = area;
  for (const row of drawn) {
    let body = bodies.at(-1);
    if (body === undefined || body.top - rowOf(row, area, 0, words, measure).height < window.y) {
      body = { items: [...headings(area, window.y + window.h, words)], top: window.y + window.h - 7 };
      bodies.push(body);
    }
    const { items, height } = rowOf(row, area, body.top, words, measure);
    body.items.push(...items);
    body.top -= height;
  }
  return bodies.map(({ items }, index) => {
    const label = index === 0 ? words.templates.cover : words.templates.continued(index + 1);
    return {
      label,
      ...area.page,
      items: [area.place([...items, ...sheetFrame({ ...frame, id: label, free: 0 })])],
    };
  });
}

function introduction(
  { window }: PageArea,
  about: string,
  sizes: string,
  words: PaperWords,
  measure: TextWidth,
): Flow {
  const items: PaperItem[] = [];
  let top = window.y + window.h;
  const add = (flow: Flow, air: number) => {
    items.push(...flow.items);
    top = flow.bottom - air;
  };
  const column = () => ({ x: window.x, top, width: window.w, size: SIZE });
  add(paragraph(words.templates.heading, { ...column(), size: 8, bold: true }, measure), 1);
  add(paragraph(about, { ...column(), size: 4.6 }, measure), 1);
  add(paragraph(sizes, column(), measure), 4);
  for (const [index, step] of words.templates.steps.entries()) {
    add(listed(`${index + 1}`, step, column(), measure), 1.6);
  }
  top -= 3;
  return {
    items: [...items, ...columnHeads(window.x, top, words), rule(window, top - 5.6)],
    bottom: top - 7,
  };
}

const headings = ({ window }: PageArea, top: number, words: PaperWords): readonly PaperItem[] => [
  ...columnHeads(window.x, top, words),
  rule(window, top - 5.6),
];

const COLUMN = { pages: 22, drawers: 62 } as const;

const columnHeads = (x: number, top: number, words: PaperWords): readonly PaperItem[] => {
  const { id, pages, drawers } = words.templates.columns;
  return [
    text(id, point(x, top - 4), 3.2, { bold: true }),
    text(pages, point(x + COLUMN.pages, top - 4), 3.2, { bold: true }),
    text(drawers, point(x + COLUMN.drawers, top - 4), 3.2, { bold: true }),
  ];
};

const rule = ({ x, w }: PageArea['window'], y: number): PaperItem =>
  line(point(x, y), point(x + w, y), STROKES.rule);

function rowOf(
  { template, layout: { tiling } }: DrawnTemplate,
  { window }: PageArea,
  top: number,
  words: PaperWords,
  measure: TextWidth,
): { readonly items: readonly PaperItem[]; readonly height: number } {
  const width = window.w - COLUMN.drawers;
  const drawers = paragraph(
    usersText(template.users, words),
    { x: window.x + COLUMN.drawers, top, width, size: SIZE },
    measure,
  );
  const [first, last] = [tiling.tiles[0], tiling.tiles.at(-1)];
  const range =
    first === undefined || last === undefined || first === last
      ? template.id
      : `${pageName(template.id, first, tiling)} – ${last.id} (${tiling.tiles.length})`;
  const height = top - drawers.bottom + 1.8;
  return {
    items: [
      text(template.id, point(window.x, top - SIZE), SIZE, { bold: true }),
      text(range, point(window.x + COLUMN.pages, top - SIZE), SIZE),
      ...drawers.items,
      rule(window, top - height + 0.6),
    ],
    height,
  };
}
