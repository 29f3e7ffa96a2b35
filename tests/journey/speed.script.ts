import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { startProgram } from './program.ts';

const ASSETS = join(import.meta.dirname, '../../dist/renderer/assets');
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

const READING = `document.querySelectorAll('[role=row]')[1].querySelectorAll('[role=gridcell]')[5].textContent`;
const DRAWN = `(performance.getEntriesByName('seat-picture').at(-1)?.startTime ?? 0)`;

/** When the page first saw that something is so, by its own clock in ms. */
const seen = async (page: Page, condition: string): Promise<number> =>
  Number(
    await page.evaluate(
      `new Promise((done) => { const end = performance.now() + 10000; const look = () => (${condition}) ? done(performance.now()) : performance.now() > end ? done(NaN) : setTimeout(look, 2); look(); })`,
    ),
  );

test('speed: bundle, first picture, edit to reading, edit to picture', async () => {
  const lines: string[] = [];
  const program = await startProgram();
  for (const name of readdirSync(ASSETS).filter((file) => /\.(js|css)$/.test(file))) {
    const bytes = readFileSync(join(ASSETS, name));
    lines.push(`${(gzipSync(bytes).length / 1000).toFixed(1).padStart(8)} kB gz  ${name}`);
  }
  const first: number[] = [];
  for (let round = 0; round < 3; round += 1) {
    const begin = performance.now();
    const page = await program.reopen();
    const table = performance.now() - begin;
    await page.locator('canvas').first().waitFor();
    first.push(performance.now() - begin);
    lines.push(`table after ${table.toFixed(0)} ms, canvas after ${(first.at(-1) ?? 0).toFixed(0)} ms`);
    await page.close();
  }
  const { page } = program;
  for (const drawers of [36, 500]) {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open…' }).click();
    // The edits of the round before are not kept.
    if (drawers === 500) await page.getByRole('button', { name: 'Do not save' }).click();
    await (
      await chooser
    ).setFiles({ name: 'long.csv', mimeType: 'text/csv', buffer: Buffer.from(longOrder(drawers)) });
    await page.getByText(`${drawers} drawers`).waitFor({ timeout: 60_000 });
    await page.locator('canvas').first().waitFor();
    const row = page.getByRole('row').nth(1);
    const fits: number[] = [];
    const pictures: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const style = round % 2 === 0 ? 'partial overlay' : 'full overlay';
      await row.getByRole('gridcell').nth(8).dblclick();
      const before = await row.getByRole('gridcell').nth(5).textContent();
      const begin = Number(await page.evaluate('performance.now()'));
      await page.keyboard.insertText(style);
      fits.push((await seen(page, `${READING} !== ${JSON.stringify(before)}`)) - begin);
      await seen(page, `${DRAWN} > ${begin}`);
      pictures.push(Number(await page.evaluate(DRAWN)) - begin);
      await page.keyboard.press('Enter');
    }
    lines.push(
      `${drawers} drawers: edit to reading on the screen, median of ${ROUNDS}: ${median(fits).toFixed(0)} ms; to the picture of the seat: ${median(pictures).toFixed(0)} ms`,
    );
  }
  await program.close();
  process.stdout.write(`${lines.join('\n')}\n`);
  expect(lines.length).toBeGreaterThan(5);
});
