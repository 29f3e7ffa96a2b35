import { describe, expect, test } from 'vitest';
import { box, circle, outline, text } from '../../../core/files/paper/page/draw.ts';
import { STROKES } from '../../../core/files/paper/page/strokes.ts';
import type { PaperDocument } from '../../../core/files/paper/page/types.ts';
import { writePdf } from '../../../core/files/paper/pdf/write-pdf.ts';
import { SHEET_NAMES, SHEET_SIZES } from '../../../core/files/paper/sheet/sheet-sizes.ts';
import { along, rectangleOf, type DrawnLine } from './drawn.ts';
import { PAPER_FONTS } from './paper-fonts.ts';
import { readPdf } from './read-pdfjs.ts';
import { readPoppler } from './read-poppler.ts';
import { near } from './told.ts';
import { hasCommand, runOn } from './tool.ts';

/** A square, a circle and an arc of 300 mm radius, and words, on a page of every sheet. */
const DOCUMENT: PaperDocument = {
  title: 'Größe ½″',
  language: 'en',
  date: '2031-05-20',
  pages: SHEET_NAMES.map((name) => ({
    label: `Page ${name}`,
    ...SHEET_SIZES[name],
    items: [
      box({ x: 20, y: 30, w: 100, h: 100 }, STROKES.thin),
      circle({ x: 100, y: 100 }, 300, STROKES.strong),
      outline(
        {
          kind: 'path',
          vertices: [
            { x: 50, y: 400, bulge: Math.tan((100 * Math.PI) / 180 / 4) },
            { x: 50 + 600 * Math.sin((50 * Math.PI) / 180), y: 400, bulge: 0 },
          ],
        },
        STROKES.fold,
      ),
      text('Width 1 7/16" × ½ ⅛ ⅜ ′ ″ ° → ↓ Ø é', { x: 20, y: 20 }, 4),
      text('bold', { x: 20, y: 10 }, 4, { bold: true, angle: 30 }),
    ],
  })),
};

const PDF = await writePdf(DOCUMENT, PAPER_FONTS);
const PAGES = await readPdf(PDF);

const raw = Buffer.from(PDF).toString('latin1');

/** ISO 216 in mm; letter, legal and tabloid in points as ASME Y14.1 has them (reference section 6). */
const POINT = 25.4 / 72;
const PUBLISHED = {
  A4: [210, 297],
  A3: [297, 420],
  A2: [420, 594],
  A1: [594, 841],
  A0: [841, 1189],
  letter: [612 * POINT, 792 * POINT],
  legal: [612 * POINT, 1008 * POINT],
  tabloid: [792 * POINT, 1224 * POINT],
} as const;

describe('writePdf', () => {
  test('writePdf makes pages of exactly the published sizes (PDF-1)', () => {
    for (const [name, [width, height]] of Object.entries(PUBLISHED)) {
      const page = PAGES.find(({ label }) => label === `Page ${name}`);
      expect(near(page?.width ?? NaN, width, 1e-4, `${name} width`)).toBe('');
      expect(near(page?.height ?? NaN, height, 1e-4, `${name} height`)).toBe('');
    }
  });

  test('writePdf draws a 100 mm square 100 mm wide and high on every sheet, for both readers (PDF-1)', () => {
    for (const [index, { lines, label }] of PAGES.entries()) {
      for (const read of [lines, readPoppler(PDF, index + 1)]) {
        const square = read.map(rectangleOf).find((one) => one !== null && Math.abs(one.x - 20) < 0.1);
        expect(near(square?.w ?? NaN, 100, 0.01, `${label} across`)).toBe('');
        expect(near(square?.h ?? NaN, 100, 0.01, `${label} up`)).toBe('');
        expect(near(square?.y ?? NaN, 30, 0.01, `${label} place`)).toBe('');
      }
    }
  });

  test('writePdf draws circles and arcs of 300 mm within 0.005 mm, in curves of 45 degrees at most (PDF-1)', () => {
    const large = SHEET_NAMES.indexOf('A0');
    for (const read of [PAGES[large]?.lines ?? [], readPoppler(PDF, large + 1)]) {
      const round = read.filter(({ stretches }) => stretches.some(([a, b]) => a.x !== b.x || a.y !== b.y));
      expect(round.map(({ stretches }) => stretches.length)).toEqual([8, 3]);
      const centers = [
        { x: 100, y: 100 },
        // The arc bulges to the right of its way, below its chord.
        { x: 50 + 300 * Math.sin((50 * Math.PI) / 180), y: 400 + 300 * Math.cos((50 * Math.PI) / 180) },
      ];
      const off = round.map((line, index) => roundness(line, centers[index] ?? { x: NaN, y: NaN }));
      expect(Math.max(...off)).toBeLessThan(0.005);
    }
  });

  test('writePdf asks for no scaling, enforced, one-sided, and labels its pages (PDF-2)', () => {
    expect(raw).toMatch(/\/PrintScaling \/None/);
    expect(raw).toMatch(/\/Enforce \[\/PrintScaling\]/);
    expect(raw).toMatch(/\/Duplex \/Simplex/);
    expect(raw).toMatch(/\/DisplayDocTitle true/);
    expect(PAGES.map(({ label }) => label)).toEqual(SHEET_NAMES.map((name) => `Page ${name}`));
  });

  test('writePdf states title, day and language (PDF-2)', () => {
    const info = runOn(PDF, 'pdfinfo', '-isodates', '%');
    expect(info).toMatch(/^Title: +Größe ½″$/m);
    expect(info).toMatch(/^CreationDate: +2031-05-20T00:00:00Z$/m);
    expect(raw).toMatch(/\/Lang \(en\)/);
  });

  test('writePdf embeds both fonts as subsets and no other, and its text can be read (PDF-2)', () => {
    const fonts = runOn(PDF, 'pdffonts', '%').trim().split('\n').slice(2);
    expect(fonts).toHaveLength(2);
    // Columns: name, type, encoding, embedded, subset, unicode.
    for (const font of fonts) expect(font).toMatch(/Identity-H +yes yes yes/);
    const words = runOn(PDF, 'pdftotext', '-f', '1', '-l', '1', '%', '-');
    expect(words).toContain('Width 1 7/16" × ½ ⅛ ⅜ ′ ″ ° → ↓ Ø é');
  });

  test('writePdf has lines, fills and text only: no image, shading or pattern (PDF-2)', () => {
    const painting = new Set(
      PAGES.flatMap(({ operators }) => [...operators]).filter((name) => /paint|shading|image/i.test(name)),
    );
    expect([...painting]).toEqual([]);
  });

  test('writePdf writes the same bytes for the same document (EXP)', async () => {
    const again = await writePdf(DOCUMENT, PAPER_FONTS);
    expect(Buffer.compare(Buffer.from(again), Buffer.from(PDF))).toBe(0);
  });

  test.skipIf(!hasCommand('qpdf'))('writePdf passes qpdf --check (PDF-2)', () => {
    expect(runOn(PDF, 'qpdf', '--check', '%')).toContain('No syntax or stream encoding errors found');
  });

  test('writePdf reports each page, and refuses a document without any', async () => {
    const seen: number[] = [];
    await writePdf(DOCUMENT, PAPER_FONTS, (done, of) => seen.push(done / of));
    expect(seen).toHaveLength(SHEET_NAMES.length);
    expect(seen.at(-1)).toBe(1);
    await expect(writePdf({ ...DOCUMENT, pages: [] }, PAPER_FONTS)).rejects.toThrow('no pages');
  });
});

/** mm. How far a line leaves the circle of 300 mm about a centre. */
const roundness = ({ stretches }: DrawnLine, center: { readonly x: number; readonly y: number }): number =>
  Math.max(
    ...stretches
      .flatMap((stretch) => along(stretch, 200))
      .map(({ x, y }) => Math.abs(Math.hypot(x - center.x, y - center.y) - 300)),
  );
