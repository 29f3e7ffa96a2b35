import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { EVERYTHING, type OutputChoice } from '../../core/files/output-choice.ts';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft, rowOf, withCell, type DemoDraft } from './demo-draft.ts';
import { calls, change, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

const harbor = demoDraft('harbor-library');
const IDLE = { state: 'idle', done: 0, of: 0 };
/** Cut files and lists, without what is printed or made on request. */
const CUT: OutputChoice = {
  ...EVERYTHING,
  kinds: ['dxf', 'svg', 'fit', 'schedule', 'parts', 'read-first'],
};
const SHOWN = { run: IDLE, since: 'nothing', choice: CUT };
const CALLBACKS = ['onChoice', 'onStart', 'onCancel', 'onShow', 'onRegistration', 'onMachine', 'onRow'];

/** What the page looks at of a design: all the geometry of a hundred jigs takes its time on the way to a browser. */
const slim = ({ designed }: DemoDraft) => ({
  ...designed,
  fits: {},
  fastenings: {},
  uses: [],
  aids: [],
  jigs: designed.jigs.map((jig) => ({ ...jig, pieces: [] })),
});

async function outputPage(demo: DemoDraft, scene: Scene = {}): Promise<Page> {
  const page = await openPage(scene);
  await show(page, 'OutputPage', { draft: demo.draft, designed: slim(demo), ...SHOWN }, CALLBACKS, {
    onChoice: 'choice',
  });
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

  test('says that what was written is from before an edit, keeps the folder, and offers to write again', async () => {
    const page = await outputPage(harbor);
    const run = { state: 'done', done: 40, of: 40, files: 85, place: '/shop/harbor' };
    await change(page, { run });
    const status = page.getByRole('status').last();
    expect(await status.textContent()).toContain('✓ Written: 85 files of 40 parts');
    await change(page, { since: 'edited' });
    const said = (await status.textContent()) ?? '';
    expect(said).not.toContain('✓');
    expect(said).toContain('What was written is from before the change.');
    expect(said).toContain('/shop/harbor');
    await page.getByRole('button', { name: 'Show the folder' }).click();
    await page.getByRole('button', { name: 'Write the files again …' }).click();
    expect(await names(page)).toEqual(['onShow', 'onStart']);
    await change(page, { since: 'other choice' });
    expect(await status.textContent()).toContain('another choice of files than is made now');
  });

  test('writes only the kinds that are ticked, and shows at once which files those are', async () => {
    const page = await outputPage(harbor);
    const rows = page.getByRole('group', { name: 'List of files' }).getByRole('row');
    const parts = harbor.designed.parts;
    await page.getByRole('checkbox', { name: /^SVG/ }).uncheck();
    expect(await rows.count()).toBe(1 + parts.length + 5);
    await page.getByRole('checkbox', { name: /^DXF/ }).uncheck();
    expect(await page.locator('.output-table tbody th').allTextContents()).toEqual([
      'fit.csv',
      'schedule.csv',
      'parts.csv',
      'read-first.txt',
      'manifest.json',
    ]);
    expect(await page.getByRole('button', { name: 'Write the files …' }).isEnabled()).toBe(true);
    for (const name of [/^fit\.csv/, /^schedule\.csv/, /^parts\.csv/, /^read-first\.txt/]) {
      await page.getByRole('checkbox', { name }).uncheck();
    }
    expect(await page.getByRole('button', { name: 'Write the files …' }).isDisabled()).toBe(true);
    expect(await page.getByText(/^No file is chosen; choose at least one of DXF, SVG/).count()).toBe(1);
    await page.getByRole('checkbox', { name: /^SVG/ }).check();
    await page.getByRole('checkbox', { name: /^DXF/ }).check();
    expect((await calls(page)).at(-1)).toEqual(['onChoice', { ...CUT, kinds: ['dxf', 'svg'] }]);
  });

  test('prints on the paper that is chosen, with the factors of the printer', async () => {
    const page = await outputPage(harbor);
    expect(await page.getByLabel('Paper', { exact: true }).count()).toBe(0);
    await page.getByRole('checkbox', { name: /^Templates/ }).check();
    const listed = page.locator('.output-table tbody th');
    expect(await listed.allTextContents()).toContain('paper/templates.pdf');
    await page.getByLabel('Paper', { exact: true }).selectOption('A3');
    const factor = page.getByLabel('Printer factor across the short side');
    await factor.fill('1.2');
    await factor.press('Enter');
    expect(await page.getByText(/write a number from 0\.97 to 1\.03/).count()).toBe(1);
    await factor.fill('1,002');
    await factor.press('Enter');
    expect((await calls(page)).at(-1)).toEqual([
      'onChoice',
      {
        ...CUT,
        kinds: [...CUT.kinds, 'templates'],
        paper: { ...CUT.paper, sheet: 'A3', factors: { x: 1.002, y: 1 } },
      },
    ]);
  });

  test('writes only the parts of picked jigs, and counts those', async () => {
    const page = await outputPage(harbor);
    const [first, second] = harbor.designed.jigs;
    if (first === undefined || second === undefined) throw new Error('the demo order has too few jigs');
    await page.getByLabel('Jigs', { exact: true }).selectOption('picked');
    expect(await page.getByText(/^No jig is chosen; choose at least one, from B1 to /).count()).toBe(1);
    const jig = (id: string) => page.getByRole('checkbox', { name: new RegExp(`^${id} `) });
    await jig(second.id).check();
    await jig(first.id).check();
    await jig(second.id).uncheck();
    const own = harbor.designed.parts.filter((part) => part.jig === first.id);
    const cut = await page.locator('.output-table tbody td:nth-child(3)').allTextContents();
    expect(new Set(cut.filter((part) => part !== 'whole order'))).toEqual(new Set(own.map(({ id }) => id)));
    const totals = await page.locator('.output-totals dd').allTextContents();
    const pieces = own.reduce((sum, { copies }) => sum + copies, 0);
    expect(totals.map(Number)).toEqual([2 * own.length + 5, 1, own.length, pieces]);
  });

  test('is stopped by a picked jig that an edit has taken away, until it is unpicked', async () => {
    const page = await outputPage(harbor);
    const [first] = harbor.designed.jigs;
    const choice: OutputChoice = { ...CUT, jigs: [first?.id ?? '', 'B99'] };
    await change(page, { choice });
    expect(await page.getByText(/^This order has no jig "B99"; its jigs are /).count()).toBe(1);
    expect(await page.getByRole('button', { name: 'Write the files …' }).isDisabled()).toBe(true);
    await page.getByRole('checkbox', { name: /^B99: not among the jigs/ }).click();
    expect(await page.getByRole('button', { name: 'Write the files …' }).isEnabled()).toBe(true);
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
    const jigs = harbor.designed.jigs.slice(0, 2).map(({ id }) => id);
    await change(page, {
      run: { state: 'done', done: 40, of: 40, files: 85, place: '/shop/harbor' },
      since: 'edited',
      choice: { ...EVERYTHING, jigs },
    });
    expect(await axeFindings(page)).toEqual([]);
    await change(page, { run: { state: 'running', done: 12, of: 40 } });
    expect(await sidewaysScroll(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });
});
