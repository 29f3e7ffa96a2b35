import { readStandard } from '../../rules/read-standard.ts';
import { describe, expect, test } from 'vitest';
import { CAUTIONS } from '../../../core/cautions/cautions.ts';
import { calibrationPdf } from '../../../core/files/paper/calibration-pdf.ts';
import { checklistPdf } from '../../../core/files/paper/checklist-pdf.ts';
import { bitLength } from '../../../core/files/paper/instructions/numbers.ts';
import { groupSetups } from '../../../core/files/paper/instructions/group-setups.ts';
import { membersOf } from '../../../core/files/paper/instructions/types.ts';
import { instructionsPdf } from '../../../core/files/paper/instructions-pdf.ts';
import { groupTemplates } from '../../../core/files/paper/template/group-templates.ts';
import { SHEET_NAMES } from '../../../core/files/paper/sheet/sheet-sizes.ts';
import { USUAL_PAPER } from '../../../core/files/paper/sheet/settings.ts';
import { drawerName } from '../../../core/fit/drawer-name.ts';
import { planJigs } from '../../../core/jigs/plan.ts';
import { lineDrawing } from '../../../core/scene/line-drawing.ts';
import { seatScene } from '../../../core/scene/seat-scene.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { readMachine } from '../../jigs/setups.ts';
import { rectangleOf, singles } from './drawn.ts';
import { demoFits } from './fits.ts';
import { leaning } from './made-up-fastening.ts';
import { PAPER_FONTS } from './paper-fonts.ts';
import { readPdf } from './read-pdfjs.ts';
import { below, near, same } from './told.ts';
import { runOn } from './tool.ts';
import { collisions, leaves, wordsOf } from './words-on-page.ts';

const BOX = readStandard('face-frame-undermount.json').box;

const CASES = [
  ['harbor-library', 'laser-6', 'edge'],
  ['boathouse-frameless', 'router', 'corner'],
] as const;

const made = CASES.map(([name, machineName, registration]) => {
  const { order, fits } = demoFits(name);
  const machine = readMachine(machineName);
  const plan = planJigs(fits, registration, { machine, unit: order.unit, order: [order.name] }).value;
  const fastenings = new Map(fits.map((fit) => [fit, leaning(fit, 9)]));
  const templates = groupTemplates(fits.map((fit) => ({ fit, fastening: fastenings.get(fit) ?? null })));
  const fasteningOf = (fit: (typeof fits)[number]) => fastenings.get(fit) ?? null;
  const setups = groupSetups({ fits, uses: plan.uses, fasteningOf, templates });
  return { order, fits, machine, plan, setups };
});

describe('instructionsPdf', () => {
  test('instructionsPdf makes one page for each setup, with its drawers, jigs, numbers and all cautions', async () => {
    for (const { order, fits, setups } of made) {
      const { value } = await instructionsPdf({ order, setups, fonts: PAPER_FONTS });
      const pages = await readPdf(value ?? new Uint8Array());
      expect(pages).toHaveLength(setups.length);
      expect(setups.flatMap(membersOf)).toHaveLength(fits.length);
      for (const [index, setup] of setups.entries()) {
        const words = pages[index] === undefined ? '' : wordsOf(pages[index]);
        expect(words).toContain(`Setup ${index + 1} of ${setups.length}`);
        for (const { id } of setup.jigs) expect(words).toContain(`Seat jig ${id}`);
        for (const { fit } of membersOf(setup).slice(0, 6)) expect(words).toContain(drawerName(fit.drawer));
        const [first] = membersOf(setup);
        if (first === undefined) throw new Error('a setup without drawers');
        const length = formatLength(first.fit.overhang.bottom, order.unit);
        expect(words).toContain(`Bottom overhang: ${length}`);
        for (const caution of CAUTIONS) expect(words.replaceAll(/\s+/g, ' ')).toContain(caution);
        expect(words).toContain('Check before the next drawer');
      }
    }
  });

  test('instructionsPdf fits A4 and letter alike, with no words on top of others (PDF-5)', async () => {
    for (const { order, setups } of made) {
      const { value } = await instructionsPdf({ order, setups, fonts: PAPER_FONTS });
      for (const page of await readPdf(value ?? new Uint8Array())) {
        // The inside of 190 x 259 mm prints on 210 x 297 and on 215.9 x 279.4 with margins of 10 mm.
        expect([page.width, page.height].map((mm) => mm.toFixed(1))).toEqual(['210.0', '279.4']);
        for (const { box, text } of page.texts)
          expect(below(leaves(box, page, 10), 0.1, `${page.label}: ${text}`)).toBe('');
        expect(same(collisions(page), [], page.label)).toBe('');
      }
    }
  });

  test('instructionsPdf draws the seats that it is given', async () => {
    const [, one] = made;
    if (one === undefined) throw new Error('no order');
    const { order, plan, setups, machine } = one;
    const some = setups.slice(0, 2);
    const asked: string[] = [];
    const { value } = await instructionsPdf({
      order,
      setups: some,
      fonts: PAPER_FONTS,
      pictureOf: (fit, { id, edges }) => {
        asked.push(id);
        const jig = plan.jigs.find((jig) => jig.id === id);
        const scene = jig === undefined ? null : seatScene({ fit, jig, uses: edges, machine, box: BOX });
        const view = scene?.views[0];
        return scene === null || view === undefined ? null : lineDrawing(scene, view, order.unit);
      },
    });
    expect(asked).toEqual(some.flatMap(({ jigs }) => jigs.map(({ id }) => id)));
    const pages = await readPdf(value ?? new Uint8Array());
    for (const page of pages) {
      expect(page.texts.filter(({ text }) => text === 'Cabinet left').length).toBe(2);
      expect(page.lines.length).toBeGreaterThan(200);
      expect(same(collisions(page), [], page.label)).toBe('');
    }
  });

  test('instructionsPdf writes the same bytes for the same order, and is null without setups (EXP)', async () => {
    const [one] = made;
    if (one === undefined) throw new Error('no order');
    const request = { order: one.order, setups: one.setups.slice(0, 3), fonts: PAPER_FONTS };
    const [a, b] = [await instructionsPdf(request), await instructionsPdf(request)];
    expect(Buffer.compare(Buffer.from(a.value ?? []), Buffer.from(b.value ?? [1]))).toBe(0);
    expect((await instructionsPdf({ ...request, setups: [] })).value).toBeNull();
  });
});

describe('bitLength', () => {
  test('bitLength never lets the bit out further than box front and pilot are deep, nor 1/32 in short of it', () => {
    for (const { fits } of made) {
      for (const fit of fits.slice(0, 5)) {
        const fastening = leaning(fit, 0);
        if (fastening.holes === null) throw new Error('no holes');
        const deep = fit.boxFront + fastening.holes.pilotDepth;
        const bit = bitLength(fastening, fastening.holes);
        expect(bit).toBeLessThanOrEqual(deep + 1e-3);
        expect(bit).toBeGreaterThan(deep - 0.8);
      }
    }
  });
});

describe('checklistPdf', () => {
  test('checklistPdf has a line with four boxes to tick for every single drawer', async () => {
    for (const { order, fits, setups } of made) {
      const { value } = await checklistPdf({ order, setups, fonts: PAPER_FONTS });
      const pages = await readPdf(value);
      const boxes = pages.flatMap(({ lines }) => lines.flatMap((line) => rectangleOf(line) ?? []));
      const drawers = fits.reduce((sum, { drawer }) => sum + drawer.qty, 0);
      expect(boxes).toHaveLength(4 * drawers);
      const words = runOn(value, 'pdftotext', '-layout', '%', '-');
      const last = fits.at(-1);
      expect(words).toContain(`Page ${pages.length} of ${pages.length}`);
      expect(words).toContain(last === undefined ? 'none' : drawerName(last.drawer));
      for (const page of pages) {
        for (const { box, text } of page.texts) expect(below(leaves(box, page, 10), 0.1, text)).toBe('');
        expect(same(collisions(page), [], page.label)).toBe('');
      }
    }
  });
});

describe('calibrationPdf', () => {
  test('calibrationPdf has two long lines of the length that it says, and a 100 mm square, on every sheet (PDF-4)', async () => {
    for (const sheet of SHEET_NAMES) {
      for (const unit of ['mm', 'in'] as const) {
        const { value } = await calibrationPdf({
          settings: { ...USUAL_PAPER, sheet },
          unit,
          fonts: PAPER_FONTS,
        });
        const [page] = await readPdf(value ?? new Uint8Array());
        if (page === undefined) throw new Error('no page');
        const lines = singles(page.lines).map(([a, , , d]) => [d.x - a.x, d.y - a.y] as const);
        for (const [axis, index] of [
          ['x', 0],
          ['y', 1],
        ] as const) {
          const said = new RegExp(`${axis} factor += +([\\d. /]+)( mm|") +÷`).exec(wordsOf(page));
          const longest = Math.max(...lines.map((line) => line[index]));
          expect(
            same(formatLength(longest, unit).replace(/( mm|")$/, ''), said?.[1], `${sheet} ${axis}`),
          ).toBe('');
        }
        const square = page.lines
          .flatMap((line) => rectangleOf(line) ?? [])
          .find(({ w, h }) => Math.abs(w - h) < 0.01 && w > 50);
        expect(near(square?.w ?? 0, 100, 0.01, sheet)).toBe('');
        expect(same(collisions(page), [], sheet)).toBe('');
      }
    }
  });

  test('calibrationPdf with the factors that it led to prints true: the file is longer by just so much (PDF-4)', async () => {
    const longest = async (factors: { readonly x: number; readonly y: number }) => {
      const { value } = await calibrationPdf({
        settings: { ...USUAL_PAPER, sheet: 'A4', factors },
        unit: 'mm',
        fonts: PAPER_FONTS,
      });
      const [page] = await readPdf(value ?? new Uint8Array());
      return Math.max(...singles(page?.lines ?? []).map(([a, , , d]) => d.x - a.x));
    };
    // A printer that makes 160 mm of 158.4 has the factor 160 / 158.4.
    const factor = 160 / 158.4;
    const nominal = await longest({ x: 1, y: 1 });
    const made = await longest({ x: factor, y: 1 });
    expect(((made * 158.4) / 160) % 10).toBeCloseTo(nominal % 10, 2);
  });
});
