import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { startProgram } from './program.ts';

const FOLDER = join(import.meta.dirname, '../../assets/screens');

/** Small enough for a page about the program, large enough to read. */
const SIZE = { width: 1200, height: 760 } as const;

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();

/** A stage of the bench. */
const stage = (name: string) => async (page: Page) => {
  await press(page, 'Bench');
  await press(page, name);
};

/** Each screen, and how to get to it. */
const SCREENS: readonly (readonly [name: string, go: (page: Page) => Promise<void>])[] = [
  ['seat', stage('Show the seat')],
  ['cabinet', stage('Show the cabinet')],
  ['part', stage('Show the part')],
  ['screws', stage('Show the screws')],
  ['gaps', stage('Show the gaps')],
  ['standard', (page) => press(page, 'Shop standard')],
  ['machine', (page) => press(page, /^Machine$/)],
  ['jig-plan', (page) => press(page, 'Jig plan')],
  ['output', (page) => press(page, 'Files out')],
];

test('pictures of every screen, light and dark, in inches and millimetres', async () => {
  const program = await startProgram();
  const { page } = program;
  mkdirSync(FOLDER, { recursive: true });
  await page.setViewportSize(SIZE);
  for (const theme of ['light', 'dark']) {
    for (const unit of ['in', 'mm']) {
      for (const [name, go] of SCREENS) {
        await go(page);
        // Software rendering takes its time for the first picture of a seat.
        await page.waitForTimeout(name === 'seat' ? 3000 : 800);
        await page.screenshot({
          path: join(FOLDER, `${name}-${theme}-${unit}.jpg`),
          type: 'jpeg',
          quality: 60,
        });
      }
      await press(page, /Lengths in millimetres/);
    }
    await press(page, 'Dark colours');
  }
  await program.close();
  expect(readdirSync(FOLDER).filter((file) => file.endsWith('.jpg'))).toHaveLength(4 * SCREENS.length);
});
