import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoDraft } from './demo-draft.ts';
import {
  calls,
  axeFindings,
  openPage,
  show,
  sidewaysScroll,
  startHarness,
  type Harness,
  type Scene,
} from './harness.ts';

let harness: Harness;
beforeAll(async () => {
  harness = await startHarness();
});
afterAll(() => harness.browser.close());

const { draft } = demoDraft('harbor-library');
const { machine } = draft;

async function machinePage(unit: 'in' | 'mm', scene: Scene = {}): Promise<Page> {
  const page = await openPage(harness, scene);
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
