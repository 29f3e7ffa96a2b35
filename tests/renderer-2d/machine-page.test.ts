import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { couponSizes } from '../../core/calibration/coupon-sizes.ts';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft } from './demo-draft.ts';
import { calls, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

const { draft } = demoDraft('harbor-library');
const { machine } = draft;

async function machinePage(unit: 'in' | 'mm', scene: Scene = {}): Promise<Page> {
  const page = await openPage(scene);
  await show(page, 'MachinePage', { machine, draft, unit }, ['onApply', 'onOpen', 'onSave'], {
    onApply: 'machine',
  });
  await page.getByRole('heading', { name: 'Machine', exact: true }).waitFor();
  return page;
}

const changes = (page: Page) => page.getByRole('region', { name: 'What changes in the order' });
const apply = (page: Page) => page.getByRole('button', { name: 'Apply to the order' }).click();

describe('MachinePage', () => {
  test('hints how a kerf is measured, and tells what another one does', async () => {
    const page = await machinePage('mm');
    const kerf = page.getByLabel('Kerf, the full width of the cut');
    const id = ((await kerf.getAttribute('aria-describedby')) ?? '').split(' ')[0] ?? '';
    expect(await page.locator(`[id="${id}"]`).textContent()).toBe('Cut a square: hole minus piece, halved');
    await kerf.fill('0.25');
    await changes(page).getByText('The lines of every cut move: write all files anew.').waitFor();
    expect(
      await changes(page)
        .getByText(/^None of the \d+ jigs is built another way$/)
        .count(),
    ).toBe(1);
    await apply(page);
    expect(await calls(page)).toEqual([['onApply', { ...machine, kerf: 0.25 }]]);
  });

  test('reads bare numbers in the unit that is shown', async () => {
    const page = await machinePage('in');
    const thickness = page.getByLabel('Thickness of the sheet');
    expect(await thickness.inputValue()).toBe('6 mm');
    await thickness.fill('1/4');
    await changes(page)
      .getByText(/jigs change$/)
      .waitFor();
    await apply(page);
    expect(await calls(page)).toEqual([
      ['onApply', { ...machine, sheet: { ...machine.sheet, thickness: 6.35 } }],
    ]);
  });

  test('takes the measures of a coupon, and puts the kerf into the profile', async () => {
    const page = await machinePage('mm');
    const coupon = page.getByRole('region', { name: 'Measured on the coupon' });
    const put = coupon.getByRole('button', { name: 'Put into the profile' });
    expect(await put.isDisabled()).toBe(true);
    // S37: (20.14 - 19.76) / 2 = 0.19 mm.
    await coupon.getByLabel('The square hole, across').fill('20.14');
    await coupon.getByLabel('The square that fell out, across').fill('19.76');
    await coupon.getByLabel('Width of the plate').fill(String(couponSizes(machine).width));
    await coupon.getByLabel('Height of the plate, at its right').fill(String(couponSizes(machine).height));
    await coupon.getByText('Kerf 0.19 mm').waitFor();
    await put.click();
    expect(await page.getByLabel('Kerf, the full width of the cut').inputValue()).toBe('0.19 mm');
    await apply(page);
    expect(await calls(page)).toEqual([['onApply', { ...machine, kerf: 0.19 }]]);
  });

  test('adds an offcut to the stock, and shows what is wrong with it at its field', async () => {
    const page = await machinePage('mm');
    const stock = page.getByRole('region', { name: 'Sheets in stock' });
    await stock.getByRole('button', { name: 'Add a sheet or offcut' }).click();
    const width = stock.getByLabel('Width of sheet 2');
    await width.fill('wide');
    expect(await width.getAttribute('aria-invalid')).toBe('true');
    await width.fill('250');
    await stock.getByLabel('Name of sheet 2').fill('rest of oak');
    await apply(page);
    const { stock: own } = machine.sheets;
    const rest = { ...own[0], name: 'rest of oak', width: 250, count: 1, offcut: true };
    expect(await calls(page)).toEqual([
      ['onApply', { ...machine, sheets: { ...machine.sheets, stock: [...own, rest] } }],
    ]);
  });

  test("shows the parser's faults at their fields", async () => {
    const page = await machinePage('mm');
    const layer = page.getByLabel('Layer of Drill');
    await layer.fill('drill');
    expect(await layer.getAttribute('aria-invalid')).toBe('true');
    await layer.fill('CUT_INSIDE');
    await page.getByText('Fault: two operations have the layer "CUT_INSIDE"; give each its own.').waitFor();
    await page.getByLabel('DXF colour number of Pocket').fill('300');
    await changes(page).getByText(/fault/).first().waitFor();
    expect(await page.getByRole('button', { name: 'Apply to the order' }).isDisabled()).toBe(true);
  });

  test('switches how DXF files are written', async () => {
    const page = await machinePage('mm');
    await page.getByRole('checkbox', { name: /^Draw arcs and circles as lines/ }).check();
    await page.getByLabel('Version').selectOption('R12');
    await changes(page).getByText('Layers or the writing of DXF files change.').waitFor();
    await apply(page);
    const dxf = { ...machine.dxf, arcsAsLines: true, version: 'R12' };
    expect(await calls(page)).toEqual([['onApply', { ...machine, dxf }]]);
  });

  test.for([
    ['light', 1],
    ['dark', 2],
  ] as const)(
    'has nothing that axe finds, %s at %i times the size; cautions are there',
    async ([theme, zoom]) => {
      const page = await machinePage('in', { theme, zoom });
      expect(await page.getByText(/Never leave a laser running unattended/).count()).toBe(1);
      expect(await sidewaysScroll(page)).toBe(0);
      expect(await axeFindings(page)).toEqual([]);
    },
  );
});
