import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { hookedReach, measuredPart } from '../measure/overhangs.ts';
import { axeFindings } from '../readers/axe.ts';
import { readWithDxfParser } from '../readers/dxf-parser.ts';
import { firstScreenJourney } from './first-screen-journey.ts';
import { firstScripts, kilobytes } from './first-scripts.ts';
import { jigPlanJourney } from './jig-plan-journey.ts';
import { keepingJourney } from './keeping-journey.ts';
import { startProgram, type Program } from './program.ts';
import { tableJourney } from './table-journey.ts';

const INCH = 25.4;

let program: Program;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  ({ page } = program);
}, 180_000);

afterAll(() => program.close());

/** The cell of a row by its column's header. */
const cell = (row: number, header: string) =>
  page.getByRole('row').nth(row).getByRole('gridcell').nth(HEADERS.indexOf(header));

const HEADERS = [
  'State',
  'Row',
  'Cabinet',
  'Drawer',
  'Bottom overhang',
  'Left overhang',
  'Right overhang',
  'Screws, to spare',
  'Qty',
  'Style',
  'Opening width',
  'Opening height',
  'Room',
];

const shows = (row: number, header: string, text: string) =>
  expect.poll(() => cell(row, header).textContent()).toBe(text);

const press = (name: string | RegExp) =>
  page
    .getByRole('button', { name, exact: typeof name === 'string' })
    .first()
    .click();

describe('the whole job in the browser host', () => {
  test('the first screen waits for less than 150 kB of script, compressed, and no picture for three.js', () => {
    const size = (scripts: readonly string[]): number =>
      scripts.reduce((sum, name) => sum + kilobytes(name), 0);
    const [screen, picture] = [firstScripts(), firstScripts('picture')];
    expect(Math.min(screen.length, picture.length)).toBeGreaterThan(0);
    expect([...screen, ...picture].filter((name) => name.includes('three'))).toEqual([]);
    expect(size(screen)).toBeLessThan(150);
    expect(size(screen) + size(picture)).toBeLessThan(180);
  });

  test('opens with the demo order, a jig on the screen and every reading worked out', async () => {
    await shows(1, 'Bottom overhang', '11/16"');
    await shows(4, 'Bottom overhang', '2"');
    await expect.poll(() => page.getByRole('heading', { name: 'Reading room / R1 / top' }).count()).toBe(1);
    await expect.poll(() => page.locator('canvas').count()).toBeGreaterThan(0);
    const left = page.getByText('Cabinet left').filter({ visible: true });
    await expect.poll(() => left.count()).toBeGreaterThan(0);
  });

  test('an edit is seen at once in the table, the readout and the seat, and can be taken back', async () => {
    await cell(1, 'Style').dblclick();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('partial overlay');
    await page.keyboard.press('Enter');
    await shows(1, 'Bottom overhang', '1"');
    await shows(1, 'Left overhang', '11/16"');
    await cell(1, 'Cabinet').click();
    const readings = page.getByRole('group', { name: /^Overhangs/ });
    await expect.poll(() => readings.textContent()).toContain('11/16"');
    await press('Undo');
    await shows(1, 'Bottom overhang', '11/16"');
    await press('Redo');
    await shows(1, 'Bottom overhang', '1"');
    await press('Undo');
    await shows(1, 'Left overhang', '1 7/16"');
  });

  test('a fault is told beside its row, with what would be accepted', async () => {
    await cell(5, 'Opening width').click();
    await page.keyboard.type('wide');
    await page.keyboard.press('Enter');
    await shows(5, 'State', '✕fault');
    await cell(5, 'Cabinet').click();
    await expect.poll(() => page.getByText(/Row 5, opening_w, reads/).count()).toBeGreaterThan(0);
    await press('Undo');
    await shows(5, 'State', '✓fits');
  });

  test('lengths are shown in millimetres everywhere at once', async () => {
    await press(/Lengths in millimetres/);
    await shows(1, 'Left overhang', '36.51 mm');
    const readings = page.getByRole('group', { name: /^Overhangs/ });
    expect(await readings.textContent()).toContain('36.51 mm');
    await press(/Lengths in millimetres/);
    await shows(1, 'Left overhang', '1 7/16"');
  });

  test('the cabinet and the parts are shown of what is picked', async () => {
    await press('Show the cabinet');
    await expect.poll(() => page.getByRole('heading', { name: 'Cabinet', exact: true }).count()).toBe(1);
    await press('Show the part');
    await expect.poll(() => page.locator('svg path').count()).toBeGreaterThan(3);
    await press('Show the seat');
  });

  test('the screws are shown with their limits, and the gaps with what the adjusters must reach', async () => {
    await press('Show the screws');
    await page.getByRole('heading', { name: /across the side/ }).waitFor();
    expect(await page.getByRole('table').first().getByRole('row').count()).toBeGreaterThan(5);
    await press('Across the rail');
    await page.getByRole('heading', { name: /across the (?:bottom|top) edge/ }).waitFor();
    await press('Show the gaps');
    await page.getByRole('heading', { name: 'Does it come in?' }).waitFor();
    await page.getByText(/are expected to need rework/).waitFor();
    await press('Show the seat');
  });

  test('the cut files of picked jigs come out, and their overhangs measure what the screen says', async () => {
    await press('Files out');
    await page.getByLabel('Jigs', { exact: true }).selectOption('picked');
    for (const id of ['B3', 'B7']) {
      await page.getByRole('checkbox', { name: new RegExp(`^${id} bottom fence`) }).check();
    }
    await page.getByRole('checkbox', { name: /^SVG/ }).uncheck();
    const download = page.waitForEvent('download');
    await page
      .getByRole('main')
      .getByRole('button', { name: /write|start/i })
      .first()
      .click();
    const zip = join(program.folder, 'jigs.zip');
    await (await download).saveAs(zip);
    const files = unzipSync(readFileSync(zip));
    const names = Object.keys(files);
    const text = (ending: string): string => {
      const name = names.find((one) => one.endsWith(ending));
      const bytes = name === undefined ? undefined : files[name];
      if (bytes === undefined) throw new Error(`${ending} is not among ${names.join(', ')}`);
      return new TextDecoder().decode(bytes);
    };
    expect(text('manifest.json')).toContain('overhang-manifest');
    const others = names.filter(
      (name) => !/\/(?:dxf\/B[37]-[^/]+\.dxf|paper\/[a-z]+\.pdf|[\w-]+\.(?:csv|txt|json))$/.test(name),
    );
    expect(others).toEqual([]);
    const part = (id: string) => measuredPart(readWithDxfParser(text(`dxf/${id}_mm.dxf`)).entities);
    expect(hookedReach(part('B3-plate'), part('B3-lip'))).toBeCloseTo((11 / 16) * INCH, 2);
    expect(hookedReach(part('B7-plate'), part('B7-lip'))).toBeCloseTo(2 * INCH, 2);
    await press('Bench');
  });

  test('after an edit the page says that the files are from before it, until the edit is taken back', async () => {
    await cell(1, 'Style').dblclick();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('partial overlay');
    await page.keyboard.press('Enter');
    await press('Files out');
    const main = page.getByRole('main');
    await expect.poll(() => main.getByText('What was written is from before the change.').count()).toBe(1);
    expect(await main.getByRole('link', { name: 'Download the folder' }).count()).toBe(1);
    await press('Undo');
    await expect.poll(() => main.getByText(/^✓ Written: \d+ files/).count()).toBe(1);
    await press('Bench');
    await shows(1, 'Left overhang', '1 7/16"');
  });

  test('the document is saved, and opened again the same', async () => {
    await cell(1, 'Opening height').click();
    await page.keyboard.type('6 1/4');
    await page.keyboard.press('Enter');
    const download = page.waitForEvent('download');
    await press('Save');
    const saved = join(program.folder, 'library.overhang');
    await (await download).saveAs(saved);
    const again = await program.reopen();
    const chooser = again.waitForEvent('filechooser');
    await again.getByRole('button', { name: 'Open…' }).click();
    await (await chooser).setFiles(saved);
    const height = again.getByRole('row').nth(1).getByRole('gridcell').nth(HEADERS.indexOf('Opening height'));
    await expect.poll(() => height.textContent()).toBe('6 1/4');
    await again.close();
  });

  test('a CSV file with faults is read, its faults beside the rows', async () => {
    const again = await program.reopen();
    const csv = join(program.folder, 'kitchen.csv');
    writeFileSync(
      csv,
      'cabinet,drawer,qty,style,opening_w,opening_h\nB1,one,1,full overlay,18,6\nB2,one,none,full overlay,18,6\n',
    );
    const chooser = again.waitForEvent('filechooser');
    await again.getByRole('button', { name: 'Open…' }).click();
    await (await chooser).setFiles(csv);
    const state = (row: number) => again.getByRole('row').nth(row).getByRole('gridcell').first();
    // The demo order, open until then, has no fault.
    await expect.poll(() => state(2).textContent()).toBe('✕fault');
    await expect.poll(() => state(1).textContent()).toBe('✓fits');
    await again.close();
  });

  jigPlanJourney(() => program);
  keepingJourney(() => program);
  firstScreenJourney(() => program);
  tableJourney(() => program);

  test('cells of a spreadsheet are pasted, new rows with them', async () => {
    const before = Number(await page.getByRole('grid').getAttribute('aria-rowcount'));
    await cell(1, 'Drawer').click();
    await page.evaluate(`(() => {
      const data = new DataTransfer();
      data.setData('text/plain', 'first\\nsecond\\n');
      document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    })()`);
    await shows(1, 'Drawer', 'first');
    await shows(2, 'Drawer', 'second');
    expect(Number(await page.getByRole('grid').getAttribute('aria-rowcount'))).toBe(before);
    await press('Undo');
    await shows(1, 'Drawer', 'top');
  });
});

describe('everybody can use it', () => {
  test.for(['light', 'dark'])('axe finds nothing on any page, in %s', async (theme) => {
    const dark = page.getByRole('button', { name: 'Dark colours' });
    if (((await dark.getAttribute('aria-pressed')) === 'true') !== (theme === 'dark')) await dark.click();
    for (const name of ['Shop standard', 'Machine', 'Files out', 'Bench']) {
      await press(name);
      await page.waitForTimeout(500);
      expect({ name, found: await axeFindings(page) }).toEqual({ name, found: [] });
    }
    for (const name of ['Show the cabinet', 'Show the part', 'Show the seat']) {
      await press(name);
      await page.waitForTimeout(500);
      expect({ name, found: await axeFindings(page) }).toEqual({ name, found: [] });
    }
    if (theme === 'dark') await dark.click();
  });

  test('the table is worked by keys alone: move, change, leave as it was', async () => {
    await cell(1, 'Cabinet').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('End');
    const focused = () => page.evaluate('document.activeElement.textContent');
    expect(await focused()).toBe('Reading room');
    await page.keyboard.press('F2');
    await page.keyboard.type('x');
    await page.keyboard.press('Escape');
    expect(await focused()).toBe('Reading room');
    await page.keyboard.press('Control+2');
    await expect.poll(() => page.getByRole('main', { name: 'Shop standard' }).count()).toBe(1);
    await page.keyboard.press('Control+1');
    await expect.poll(() => page.getByRole('grid').count()).toBe(1);
  });

  test('nothing is cut off at twice the size', async () => {
    await page.setViewportSize({ width: 720, height: 450 });
    const sideways = await page.evaluate(
      'document.documentElement.scrollWidth - document.documentElement.clientWidth',
    );
    expect(sideways).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1440, height: 900 });
  });

  test('nothing went wrong on the page in all this', () => {
    expect(program.problems).toEqual([]);
  });
});
