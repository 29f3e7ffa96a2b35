import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { firstScripts, kilobytes, PAGE } from './first-scripts.ts';
import { startProgram } from './program.ts';

const ROUNDS = 7;

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** An order of so many cabinets of one drawer each, as CSV: an edit of one puts no other at fault. */
const longOrder = (drawers: number): string => {
  const rows = Array.from(
    { length: drawers },
    (_, index) => `B${index + 1},only,1,full overlay,${14 + (index % 20)},${5 + (index % 7)}`,
  );
  return ['cabinet,drawer,qty,style,opening_w,opening_h', ...rows, ''].join('\n');
};

/** Which cell of a row stands under a head. */
const columnOf = async (page: Page, head: string): Promise<number> => {
  const heads = await page.getByRole('columnheader').allTextContents();
  const index = heads.indexOf(head);
  if (index === -1) throw new Error(`the table has no column “${head}”: ${heads.join(', ')}`);
  return index;
};

/** When the newest picture of the seat was on the screen, drawn flat or in space; 0 when there is none yet. */
const picture = (means: 'flat' | 'space'): string =>
  `(performance.getEntriesByName('seat-${means}').at(-1)?.startTime ?? 0)`;
const PICTURE = picture('space');

/** When the picture that the page is built with was on the screen, by the browser's own account. */
const BUILT = `new Promise((done) => new PerformanceObserver((list) => done(list.getEntries()[0].renderTime))
  .observe({ type: 'element', buffered: true }))`;

/** When the page first saw that something is so, by its own clock in ms; throws when it does not come to that. */
const seen = async (page: Page, condition: string): Promise<number> => {
  const at = Number(
    await page.evaluate(
      `new Promise((done) => { const end = performance.now() + 20000; const look = () => (${condition}) ? done(performance.now()) : performance.now() > end ? done(NaN) : setTimeout(look, 2); look(); })`,
    ),
  );
  if (Number.isNaN(at)) throw new Error(`never seen: ${condition}`);
  return at;
};

test('speed: bundle, first picture, edit to reading, edit to picture', async () => {
  const lines: string[] = [];
  const tell = (line: string): void => {
    lines.push(line);
    process.stdout.write(`${line}\n`);
  };
  const program = await startProgram();
  for (const name of readdirSync(join(PAGE, 'assets')).filter((file) => /\.(js|css)$/.test(file))) {
    tell(`${kilobytes(`assets/${name}`).toFixed(1).padStart(8)} kB gz  ${name}`);
  }
  const first = firstScripts();
  const size = first.reduce((sum, name) => sum + kilobytes(name), 0);
  tell(`first screen: ${first.length} scripts, ${size.toFixed(1)} kB gz`);
  const seat = firstScripts('picture').reduce((sum, name) => sum + kilobytes(name), 0);
  tell(`the picture of the seat: ${seat.toFixed(1)} kB gz beside it`);
  for (let round = 0; round < 5; round += 1) {
    const page = await program.reopen();
    const built = await page.evaluate(BUILT);
    // The flat one makes way for the other, and is drawn once.
    await seen(page, `${picture('flat')} > 0`);
    const flat = Number(await page.evaluate(picture('flat')));
    await seen(page, `${PICTURE} > 0`);
    const space = Number(await page.evaluate(PICTURE));
    const paint = Number(
      await page.evaluate(`performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN`),
    );
    tell(
      `from the page's load: first paint ${paint.toFixed(0)} ms, picture of the seat on the screen ${Number(built).toFixed(0)} ms, the program's own ${flat.toFixed(0)} ms, in space ${space.toFixed(0)} ms`,
    );
    await page.close();
  }
  const { page } = program;
  const style = await columnOf(page, 'Style');
  const bottom = await columnOf(page, 'Bottom overhang');
  const reading = `document.querySelectorAll('[role=row]')[1].querySelectorAll('[role=gridcell]')[${bottom}].textContent`;
  for (const drawers of [36, 500]) {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open…' }).click();
    // The edits of the round before are not kept.
    if (drawers === 500) await page.getByRole('button', { name: 'Do not save' }).click();
    const begin = Number(await page.evaluate('performance.now()'));
    await (
      await chooser
    ).setFiles({ name: 'long.csv', mimeType: 'text/csv', buffer: Buffer.from(longOrder(drawers)) });
    await page.getByText(`${drawers} drawers`).waitFor({ timeout: 60_000 });
    const readAt = await seen(page, `document.title.includes('long') && ${reading} !== ''`);
    tell(`${drawers} drawers: opened and read off after ${(readAt - begin).toFixed(0)} ms`);
    await page.locator('canvas').first().waitFor();
    const row = page.getByRole('row').nth(1);
    const fits: number[] = [];
    const pictures: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      await row.getByRole('gridcell').nth(style).dblclick();
      const before = await row.getByRole('gridcell').nth(bottom).textContent();
      const start = Number(await page.evaluate('performance.now()'));
      await page.keyboard.insertText(round % 2 === 0 ? 'partial overlay' : 'full overlay');
      fits.push((await seen(page, `${reading} !== ${JSON.stringify(before)}`)) - start);
      await seen(page, `${PICTURE} > ${start}`);
      pictures.push(Number(await page.evaluate(PICTURE)) - start);
      await page.keyboard.press('Enter');
    }
    tell(
      `${drawers} drawers: edit to reading on the screen, median of ${ROUNDS}: ${median(fits).toFixed(0)} ms; to the picture of the seat: ${median(pictures).toFixed(0)} ms`,
    );
  }
  await program.close();
  expect(lines.length).toBeGreaterThan(5);
});
