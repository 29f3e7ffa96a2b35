import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { box, circle, line, point } from '../../../core/files/paper/page/draw.ts';
import { STROKES } from '../../../core/files/paper/page/strokes.ts';
import type { PaperDrawing } from '../../../core/files/paper/page/types.ts';
import { writePdf } from '../../../core/files/paper/pdf/write-pdf.ts';
import { USUAL_PAPER, type PaperSettings } from '../../../core/files/paper/sheet/settings.ts';
import { SHEET_NAMES, SHEET_SIZES } from '../../../core/files/paper/sheet/sheet-sizes.ts';
import { layOut } from '../../../core/files/paper/tiles/lay-out.ts';
import { tileDrawing } from '../../../core/files/paper/tiles/tile.ts';
import { tilePage } from '../../../core/files/paper/tiles/tile-page.ts';
import { measureText } from '../../../core/files/paper/pdf/measure-text.ts';
import { EN } from '../../../core/files/paper/words/en.ts';
import { along, cornersOf } from './drawn.ts';
import { joinPages } from './join-pages.ts';
import { PAPER_FONTS } from './paper-fonts.ts';
import { readPdf } from './read-pdfjs.ts';
import { same } from './told.ts';

const measure = measureText(PAPER_FONTS);

const size = fc.double({ min: 20, max: 1500, noNaN: true });

const drawings = fc
  .record({
    w: size,
    h: size,
    lines: fc.array(
      fc.tuple(...Array.from({ length: 4 }, () => fc.double({ min: 0, max: 1, noNaN: true }))),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    ring: fc.boolean(),
  })
  .map(({ w, h, lines, ring }): PaperDrawing => ({
    frame: { x: -7, y: 11, w, h },
    items: [
      ...lines.map(([a = 0, b = 0, c = 0, d = 0]) =>
        line(point(-7 + a * w, 11 + b * h), point(-7 + c * w, 11 + d * h), STROKES.thin),
      ),
      ...(ring ? [circle(point(-7 + w / 2, 11 + h / 2), Math.min(w, h) / 2, STROKES.thin)] : []),
    ],
  }));

const windows = fc.record({
  w: fc.double({ min: 100, max: 800, noNaN: true }),
  h: fc.double({ min: 100, max: 800, noNaN: true }),
});

/** Points of a drawing, close to one another, by its own formula. */
const pointsOf = ({ items }: PaperDrawing) =>
  items.flatMap((item) => {
    if (item.kind !== 'contour') return [];
    return item.contours.flatMap((contour) => {
      if (contour.kind === 'circle') {
        return Array.from({ length: 2000 }, (_, index) => ({
          x: contour.center.x + contour.radius * Math.cos((index / 1000) * Math.PI),
          y: contour.center.y + contour.radius * Math.sin((index / 1000) * Math.PI),
        }));
      }
      const [from, to] = contour.vertices;
      return from === undefined || to === undefined ? [] : along([from, from, to, to], 2000);
    });
  });

const within = (
  { x, y }: { readonly x: number; readonly y: number },
  box: { readonly x: number; readonly y: number; readonly w: number; readonly h: number },
  slack: number,
) => x >= box.x - slack && x <= box.x + box.w + slack && y >= box.y - slack && y <= box.y + box.h + slack;

describe('tileDrawing', () => {
  property.prop([drawings, windows, fc.constantFrom(5, 10, 17)])(
    'tileDrawing shows every point of a drawing in some tile, and has no tile without one (PDF-3)',
    (drawing, window, overlap) => {
      const { tiles } = tileDrawing(drawing, window, overlap, measure);
      const points = pointsOf(drawing);
      expect(points.every((one) => tiles.some(({ shows }) => within(one, shows, 1e-6)))).toBe(true);
      // A line may cross a corner of a tile between two of the points.
      const blank = tiles.filter(({ shows }) => !points.some((one) => within(one, shows, 2)));
      expect(blank).toEqual([]);
    },
  );

  property.prop([drawings, windows, fc.constantFrom(5, 10, 17)])(
    'tileDrawing overlaps neighbours by just so much, and uses no more rows and columns than needed (PDF-3)',
    (drawing, window, overlap) => {
      const { tiles, columns, rows } = tileDrawing(drawing, window, overlap, measure);
      for (const a of tiles) {
        const right = tiles.find(({ row, column }) => row === a.row && column === a.column + 1);
        if (right !== undefined) expect(a.shows.x + window.w - right.shows.x).toBeCloseTo(overlap, 9);
        const below = tiles.find(({ row, column }) => row === a.row + 1 && column === a.column);
        if (below !== undefined) expect(below.shows.y + window.h - a.shows.y).toBeCloseTo(overlap, 9);
      }
      const covers = (count: number, one: number) => count * one - (count - 1) * overlap;
      const { w, h } = drawing.frame;
      expect(covers(columns, window.w)).toBeGreaterThanOrEqual(w - 1e-6);
      expect(covers(rows, window.h)).toBeGreaterThanOrEqual(h - 1e-6);
      if (columns > 1) expect(covers(columns - 1, window.w)).toBeLessThan(w + 1e-6);
      if (rows > 1) expect(covers(rows - 1, window.h)).toBeLessThan(h + 1e-6);
    },
  );

  test('tileDrawing leaves out the tiles inside a large frame (PDF-3)', () => {
    const drawing = {
      frame: { x: 0, y: 0, w: 880, h: 880 },
      items: [box({ x: 5, y: 5, w: 870, h: 870 }, STROKES.thin)],
    };
    const { tiles, columns, rows } = tileDrawing(drawing, { w: 230, h: 230 }, 10, measure);
    expect([columns, rows]).toEqual([4, 4]);
    expect(tiles.map(({ id }) => id).join(' ')).toBe('A1 A2 A3 A4 B1 B4 C1 C4 D1 D2 D3 D4');
  });

  test('tileDrawing refuses windows that are all overlap', () => {
    const drawing = { frame: { x: 0, y: 0, w: 10, h: 10 }, items: [] };
    expect(() => tileDrawing(drawing, { w: 20, h: 50 }, 10, measure)).toThrow('cannot overlap by 10');
  });
});

describe('layOut', () => {
  test('layOut turns the page so that fewest are needed, on every sheet (PDF-5)', () => {
    for (const sheet of SHEET_NAMES) {
      for (const [w, h] of [
        [1100, 150],
        [150, 1100],
        [700, 400],
        [400, 700],
      ] as const) {
        const drawing = { frame: { x: 0, y: 0, w, h }, items: [box({ x: 0, y: 0, w, h }, STROKES.thin)] };
        const { value } = layOut(drawing, { ...USUAL_PAPER, sheet }, measure);
        const chosen = value?.tiling.tiles.length ?? NaN;
        const { width, height } = SHEET_SIZES[sheet];
        expect(
          same(
            chosen,
            Math.min(count(width, height, w, h), count(height, width, w, h)),
            `${sheet} for ${w} x ${h}`,
          ),
        ).toBe('');
      }
    }
  });

  test('layOut makes one page as large as the drawing, and refuses one longer than a PDF page may be (PDF-5)', () => {
    const settings: PaperSettings = { ...USUAL_PAPER, sheet: 'as long as needed' };
    const of = (w: number) => ({
      frame: { x: 0, y: 0, w, h: 300 },
      items: [line(point(0, 0), point(w, 300), STROKES.thin)],
    });
    const long = layOut(of(2400), settings, measure);
    expect(long.value?.tiling.tiles).toHaveLength(1);
    expect(long.value?.area.page.width).toBeGreaterThan(2400);
    const longer = layOut(of(6000), settings, measure);
    expect(longer.value).toBeNull();
    expect(longer.findings.map(({ code }) => code)).toEqual(['paper/long']);
  });
});

/**
 * Pages for a frame without any tile inside it, by counting: of each page, 34 mm are not the window's across
 * (margins 20, bands 14), and 49 up (margins 20, bands 29).
 */
function count(width: number, height: number, w: number, h: number): number {
  const [across, up] = [width - 34, height - 49];
  const needed = (length: number, window: number) => {
    let pages = 1;
    while (pages * window - (pages - 1) * 10 < length) pages += 1;
    return pages;
  };
  const [columns, rows] = [needed(w, across), needed(h, up)];
  return columns * rows - Math.max(0, columns - 2) * Math.max(0, rows - 2);
}

describe('tilePage', () => {
  test('tilePage puts a point of two pages in one place when they are joined over their crosses (PDF-3)', async () => {
    const frame = { x: -3, y: 4, w: 611, h: 507 };
    const drawing: PaperDrawing = {
      frame,
      items: [
        box(frame, STROKES.cut),
        line(point(0, 10), point(600, 500), STROKES.strong),
        line(point(20, 480), point(590, 33), STROKES.strong),
      ],
    };
    for (const factors of [
      { x: 1, y: 1 },
      { x: 0.985, y: 1.012 },
    ]) {
      const settings = { ...USUAL_PAPER, sheet: 'A4', factors } as const;
      const { value } = layOut(drawing, settings, measure);
      if (value === null) throw new Error('no layout');
      const { tiling, area } = value;
      expect(tiling.tiles.length).toBeGreaterThan(4);
      const pages = tiling.tiles.map((tile) =>
        tilePage('F1', drawing, tile, tiling, { area, about: '', settings, words: EN, measure }),
      );
      const pdf = await writePdf({ title: 'tiles', language: 'en', pages }, PAPER_FONTS);
      const upright = area.page.width < area.page.height;
      const scale = upright ? factors : { x: factors.y, y: factors.x };
      const joined = joinPages(await readPdf(pdf), tiling.overlap, scale);
      expect(joined).toHaveLength(pages.length);
      const strong = joined.flatMap(({ lines }) => lines.filter(({ width }) => Math.abs(width - 0.5) < 0.01));
      // Every page that has a line has the whole of it in its file, and clips it.
      for (const { x: dx, y: dy } of strong.map((one) => difference(one, strong))) {
        expect(Math.hypot(dx, dy)).toBeLessThan(0.005);
      }
    }
  });
});

/** How far a line's start is from the nearest start of the first two lines there are. */
function difference(one: Parameters<typeof cornersOf>[0], all: readonly Parameters<typeof cornersOf>[0][]) {
  const [start] = cornersOf(one);
  const starts = all.map((other) => cornersOf(other)[0]);
  const first = starts[0];
  const second = starts.find(
    (other) => Math.hypot((other?.x ?? 0) - (first?.x ?? 0), (other?.y ?? 0) - (first?.y ?? 0)) > 100,
  );
  const offs = [first, second].map((other) => ({
    x: (start?.x ?? NaN) - (other?.x ?? NaN),
    y: (start?.y ?? NaN) - (other?.y ?? NaN),
  }));
  return offs.reduce((best, off) => (Math.hypot(off.x, off.y) < Math.hypot(best.x, best.y) ? off : best));
}
