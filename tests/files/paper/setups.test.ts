import { describe, expect, test } from 'vitest';
import { groupSetups } from '../../../core/files/paper/instructions/group-setups.ts';
import { placeText } from '../../../core/files/paper/instructions/numbers.ts';
import { membersOf } from '../../../core/files/paper/instructions/types.ts';
import { instructionsPdf } from '../../../core/files/paper/instructions-pdf.ts';
import { checklistPdf } from '../../../core/files/paper/checklist-pdf.ts';
import { groupTemplates } from '../../../core/files/paper/template/group-templates.ts';
import { EN } from '../../../core/files/paper/words/en.ts';
import { drawerName } from '../../../core/fit/drawer-name.ts';
import { JIG_KINDS } from '../../../core/jigs/kinds.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { readMachine } from '../../jigs/setups.ts';
import { demo } from '../../pipeline/demo.ts';
import { PAPER_FONTS } from './paper-fonts.ts';
import { readPdf, type ReadPage } from './read-pdfjs.ts';
import { has, same } from './told.ts';
import { collisions } from './words-on-page.ts';

const { design } = demo('harbor-library', readMachine('laser-6'), 'edge');
const { order, fits, fastenings, plan } = design;
const fastened = new Map(fastenings.map((fastening) => [fastening.fit, fastening]));
const fasteningOf = (fit: (typeof fits)[number]) => fastened.get(fit) ?? null;
const templates = groupTemplates(fits.map((fit) => ({ fit, fastening: fasteningOf(fit) })));
const setups = groupSetups({ fits, uses: plan.uses, aids: plan.aids, fasteningOf, templates });
const { value } = await instructionsPdf({ order, setups, fonts: PAPER_FONTS });
const pages = await readPdf(value ?? new Uint8Array());

/** Words of a page, a line of a table as it is printed: spaces run together. */
const wordsOf = (page: ReadPage | undefined): string =>
  (page?.texts ?? [])
    .map(({ text }) => text)
    .join(' ')
    .replaceAll(/\s+/g, ' ');

describe('groupSetups', () => {
  test('groupSetups has every drawer once, with the jigs, guides and screws that the plan gives it', () => {
    const seen = setups.flatMap(membersOf).map(({ fit }) => fit.drawer.row);
    expect(seen.toSorted((a, b) => a - b)).toEqual(fits.map(({ drawer }) => drawer.row));
    for (const { jigs, variants } of setups) {
      for (const { aids, members } of variants) {
        for (const { fit } of members) {
          const name = drawerName(fit.drawer);
          const own = plan.uses.filter((use) => use.fit.drawer.row === fit.drawer.row);
          const used = own.map(({ jig, edge }) => `${jig.id} ${edge}`).toSorted();
          const told = jigs.flatMap(({ id, edges }) => edges.map((edge) => `${id} ${edge}`));
          expect(same(told.toSorted(), used, name)).toBe('');
          const guides = plan.aids.filter((use) => use.fit.drawer.row === fit.drawer.row);
          const corners = (list: readonly { id: string; corner: object | null }[]) =>
            list.map(({ id, corner }) => `${id} ${JSON.stringify(corner)}`).toSorted();
          expect(
            same(corners(aids), corners(guides.map(({ jig, corner }) => ({ id: jig.id, corner }))), name),
          ).toBe('');
        }
      }
    }
  });

  test('groupSetups gives one page to drawers that differ in their guides and sizes only', () => {
    // Drawers of C1 with one screw have the same jigs and overhangs: two pages at most, for one holds three rows.
    const screwOf = (fit: (typeof fits)[number]) => fasteningOf(fit)?.screw?.name;
    const inC1 = fits.filter(({ drawer }) => drawer.cabinet === 'C1');
    const rows = inC1
      .filter((fit) => screwOf(fit) === (inC1[0] === undefined ? null : screwOf(inC1[0])))
      .map(({ drawer }) => drawer.row);
    expect(rows).toHaveLength(4);
    const own = setups.filter((setup) => membersOf(setup).some(({ fit }) => rows.includes(fit.drawer.row)));
    expect(own.length).toBeLessThanOrEqual(2);
    expect(setups.length).toBeLessThan(fits.length * 0.6);
    for (const { number, variants } of setups) {
      const names = variants.map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
      expect(names.every((name) => Number.parseInt(name, 10) === number)).toBe(true);
    }
  });
});

describe('instructionsPdf with drill guides', () => {
  test('instructionsPdf names each guide of a drawer, and each screw’s lean and place, on the drawer’s page', () => {
    for (const [index, setup] of setups.entries()) {
      const words = wordsOf(pages[index]);
      for (const { aids, members } of setup.variants) {
        for (const { id } of aids) expect(has(words, id, `page ${index + 1}`)).toBe('');
        for (const { fit, fastening } of members) {
          expect(has(words, drawerName(fit.drawer), `page ${index + 1}`)).toBe('');
          for (const { angle, fromSide, fromEnd } of fastening?.places ?? []) {
            const at = [fromSide, fromEnd].map((mm) => placeText(mm, fit.unit)).join(' × ');
            expect(has(words, `${Math.round(angle * 10) / 10}° ${at}`, drawerName(fit.drawer))).toBe('');
          }
        }
      }
      const page = pages[index];
      if (page !== undefined) expect(same(collisions(page), [], page.label)).toBe('');
    }
  });

  test('instructionsPdf says “by hand” just where a screw has no guide', () => {
    for (const [index, { variants }] of setups.entries()) {
      const free = variants.some(({ members }) =>
        members.some(({ fit, fastening }) => {
          const guided = plan.aids
            .filter((use) => use.fit.drawer.row === fit.drawer.row)
            .reduce((sum, { places }) => sum + places.length, 0);
          return guided < (fastening?.places.length ?? 0);
        }),
      );
      expect(same(wordsOf(pages[index]).includes('by hand'), free, `page ${index + 1}`)).toBe('');
    }
  });

  test('instructionsPdf says which label of a block of two widths is up, and how each kind of jig is put on', () => {
    for (const { name } of JIG_KINDS) expect(EN.sheets.seats[name]?.('B1', 'bottom')).toContain('B1');
    let blocks = 0;
    for (const [index, { jigs }] of setups.entries()) {
      for (const { id, edges } of jigs) {
        const use = plan.uses.find(({ jig, edge }) => jig.id === id && edges.includes(edge));
        const widths = new Set(use?.jig.seats.flatMap(({ sets }) => sets.map(({ overhang }) => overhang)));
        if (use?.jig.kind !== 'side spacer' || widths.size < 2) continue;
        blocks += 1;
        const member = setups[index] === undefined ? undefined : membersOf(setups[index])[0];
        const edge = edges[0] ?? 'left';
        const length = formatLength(member?.fit.overhang[edge] ?? NaN, order.unit);
        expect(has(wordsOf(pages[index]), `The label on top must say ${length}.`, id)).toBe('');
      }
    }
    expect(blocks).toBeGreaterThan(3);
  });
});

describe('checklistPdf', () => {
  test('checklistPdf names the row of the setup’s table for each drawer, and what its letters mean', async () => {
    const checklist = await readPdf((await checklistPdf({ order, setups, fonts: PAPER_FONTS })).value);
    const words = checklist.map(wordsOf).join(' ');
    for (const { variants } of setups) for (const { name } of variants) expect(words).toContain(` ${name} `);
    for (const page of checklist) {
      expect(wordsOf(page)).toContain('L and R: cabinet left and right');
      expect(same(collisions(page), [], page.label)).toBe('');
    }
  });
});
