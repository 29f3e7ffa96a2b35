import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { unlike } from '../readers/png-colours.ts';
import type { Program } from './program.ts';

const picture = (page: Page) => page.locator('.seat-picture');

/** A screenshot of the picture, of whole pixels. */
async function shot(page: Page): Promise<Buffer> {
  const box = await picture(page).boundingBox();
  if (box === null) throw new Error('there is no picture');
  const whole = Math.round;
  const clip = { x: whole(box.x), y: whole(box.y), width: whole(box.width), height: whole(box.height) };
  return page.screenshot({ clip });
}

/** Ends when the seat is drawn in space and by nothing else. */
async function inSpace(page: Page): Promise<void> {
  await picture(page).locator('canvas').waitFor();
  await expect.poll(() => page.locator('.seat-flat, .seat-kept, .first-picture').count()).toBe(0);
}

/** The screen that the page is built with, until the program takes its place. */
export function firstScreenJourney(program: () => Program): void {
  test.for(['light', 'dark'] as const)(
    'before any script the page shows the seat that the program then draws, in %s',
    async (colorScheme) => {
      const built = await program().window({ colorScheme, javaScriptEnabled: false });
      await built.goto(program().address);
      expect(await built.getByText('11/16"').count()).toBeGreaterThan(0);
      expect(await built.locator('.first-picture').getByText('Bottom overhang').isVisible()).toBe(true);
      // A window that has just been opened may not give a picture yet.
      const before = await vi.waitFor(() => shot(built), { timeout: 60_000 });

      const live = await program().window({ colorScheme });
      await live.goto(program().address);
      await inSpace(live);
      await expect.poll(async () => unlike(before, await shot(live))).toBeLessThan(0.05);
      // Another theme is far from like it: the check can fail.
      await live.getByRole('button', { name: 'Dark colours' }).click();
      await expect.poll(async () => unlike(before, await shot(live))).toBeGreaterThan(0.3);
      await built.context().close();
      await live.context().close();
    },
  );

  test.for([
    { viewport: { width: 1440, height: 900 }, shown: 'seat-kept' },
    // There the built picture would not fill its place.
    { viewport: { width: 1000, height: 800 }, shown: 'seat-flat' },
  ])(
    'in a window of $viewport.width pixels $shown is there first, then space',
    async ({ viewport, shown }) => {
      const page = await program().window({ viewport });
      await page.addInitScript(`
      globalThis.shown = [];
      new MutationObserver(() => {
        const picture = document.querySelector('#root > :not([inert]) .seat-picture');
        const name = picture?.querySelector('.seat-kept, .seat-flat')?.classList[0];
        if (name !== undefined && !shown.includes(name)) shown.push(name);
      }).observe(document, { childList: true, subtree: true });
    `);
      await page.goto(program().address);
      await inSpace(page);
      expect(await page.evaluate('shown')).toEqual([shown]);
      await page.context().close();
    },
  );
}
