import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoDraft, rowOf, withCell, type DemoDraft } from './demo-draft.ts';
import {
  calls,
  change,
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

const harbor = demoDraft('harbor-library');
const IDLE = { state: 'idle', done: 0, of: 0 };
const CALLBACKS = ['onStart', 'onCancel', 'onShow', 'onRegistration', 'onMachine', 'onRow'];

async function outputPage(demo: DemoDraft, scene: Scene = {}): Promise<Page> {
  const page = await openPage(harness, scene);
  await show(page, 'OutputPage', { draft: demo.draft, designed: demo.designed, run: IDLE }, CALLBACKS);
  await page.getByRole('heading', { name: 'Files out' }).waitFor();
  return page;
}

const names = async (page: Page) => (await calls(page)).map(([name]) => name);

describe('OutputPage', () => {
  test('lists every file that will be written, with its part and copies', async () => {
    const page = await outputPage(harbor);
    const rows = page.getByRole('group', { name: 'List of files' }).getByRole('row');
    const parts = harbor.designed.parts;
    expect(await rows.count()).toBe(1 + 2 * parts.length + 5);
    const several = parts.find(({ copies }) => copies > 1);
    expect(
      await rows
        .filter({ hasText: `dxf/${several?.id}_mm.dxf` })
        .getByRole('cell')
        .allTextContents(),
    ).toEqual(['DXF to cut', several?.id, String(several?.copies)]);
    const totals = await page.locator('.output-totals dd').allTextContents();
    const pieces = parts.reduce((sum, { copies }) => sum + copies, 0);
    expect(totals.map(Number)).toEqual([
      2 * parts.length + 5,
      harbor.designed.jigs.length,
      parts.length,
      pieces,
    ]);
  });

  test('writes, shows how far it is, and can be stopped', async () => {
    const page = await outputPage(harbor);
    await page.getByRole('button', { name: 'Write the files …' }).click();
    await change(page, { run: { state: 'running', done: 12, of: 40 } });
    expect(await page.getByRole('progressbar').getAttribute('value')).toBe('12');
    expect(await page.getByText('Part 12 of 40').count()).toBe(1);
    await page.getByRole('button', { name: 'Cancel' }).click();
    await change(page, { run: { state: 'cancelled', done: 12, of: 40 } });
    expect(await page.getByText('Cancelled. Nothing was left behind.').count()).toBe(1);
    expect(await names(page)).toEqual(['onStart', 'onCancel']);
  });

  test('shows where the folder is, or lets a browser fetch it', async () => {
    const page = await outputPage(harbor);
    await change(page, { run: { state: 'done', done: 40, of: 40, place: '/shop/harbor' } });
    expect(await page.getByText('/shop/harbor').count()).toBe(1);
    await page.getByRole('button', { name: 'Show the folder' }).click();
    expect(await names(page)).toEqual(['onShow']);
    await change(page, {
      run: { state: 'done', done: 40, of: 40, place: 'harbor.zip', download: '/files/1' },
    });
    expect(await page.getByRole('link', { name: 'Download the folder' }).getAttribute('href')).toBe(
      '/files/1',
    );
  });

  test('says why it failed', async () => {
    const page = await outputPage(harbor);
    await change(page, { run: { state: 'failed', done: 3, of: 40, reason: 'The disk is full.' } });
    expect(await page.getByText('The disk is full.').count()).toBe(1);
  });

  test('is stopped by a fault, and leads to its row', async () => {
    const faulty = demoDraft('harbor-library', withCell('R1', 'upper', 'style', 'nosuch'));
    const page = await outputPage(faulty);
    expect(await page.getByRole('button', { name: /^Write the files/ }).isDisabled()).toBe(true);
    expect(await page.getByText('One fault is in the way.').count()).toBe(1);
    await page.getByRole('button', { name: 'Go to R1 / upper' }).click();
    expect(await calls(page)).toEqual([['onRow', rowOf(faulty, 'R1', 'upper')]]);
  });

  test('chooses jigs by edge or corner, and leads to the machine for the rest', async () => {
    const page = await outputPage(harbor);
    await page.getByLabel('Jigs set the box by').selectOption('corner');
    await page.getByRole('button', { name: 'Change the machine profile' }).click();
    expect(await calls(page)).toEqual([
      ['onRegistration', 'corner'],
      ['onMachine', expect.anything()],
    ]);
  });

  test('waits while the order is being worked out', async () => {
    const page = await outputPage(harbor);
    await change(page, { designed: null });
    expect(await page.getByRole('button', { name: /^Write the files/ }).isDisabled()).toBe(true);
  });

  test.for([
    ['light', 1],
    ['dark', 2],
  ] as const)('has nothing that axe finds, %s at %i times the size', async ([theme, zoom]) => {
    const page = await outputPage(harbor, { theme, zoom });
    await change(page, { run: { state: 'running', done: 12, of: 40 } });
    expect(await sidewaysScroll(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });
});
