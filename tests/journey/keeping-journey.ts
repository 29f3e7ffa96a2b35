import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Program } from './program.ts';

/** A cell of the demo order by its row, from 1, and its column. */
const cell = (page: Page, row: number, column: number) =>
  page.getByRole('row').nth(row).getByRole('gridcell').nth(column);

const DRAWER = 3;

const opened = async (program: Program): Promise<Page> => {
  const page = await program.window({});
  await page.goto(program.address);
  await page.locator('#root > :not([inert])').getByRole('grid').waitFor();
  await cell(page, 1, DRAWER).waitFor();
  return page;
};

const typeDrawer = async (page: Page, name: string): Promise<void> => {
  await cell(page, 1, DRAWER).click();
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  await expect.poll(() => cell(page, 1, DRAWER).textContent()).toBe(name);
};

const rows = (page: Page) => page.getByRole('grid').getAttribute('aria-rowcount');

/** What becomes of work that is not saved yet, and of keys that are meant for a field. */
export function keepingJourney(program: () => Program): void {
  test('work that was not saved is offered when the page is loaded again', async () => {
    const page = await opened(program());
    const isKept = page.waitForResponse(
      (response) => response.request().postData()?.includes('Reloaded') === true && response.ok(),
    );
    await typeDrawer(page, 'Reloaded');
    await isKept;
    page.on('dialog', (dialog) => void dialog.accept());
    await page.reload();
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await expect.poll(() => cell(page, 1, DRAWER).textContent()).toBe('Reloaded');
    await page.context().close();
  });

  test('keys that a field takes change nothing else: undo on a standard, deleting in the name', async () => {
    const page = await opened(program());
    await typeDrawer(page, 'kept');
    const before = await rows(page);
    await page.getByRole('button', { name: 'Shop standard' }).click();
    await page.locator('.document input[type="text"]').first().click();
    await page.keyboard.type('x');
    for (const keys of ['Control+z', 'Control+z', 'Control+Delete']) await page.keyboard.press(keys);
    await page.getByRole('button', { name: 'Bench' }).click();
    await page.getByRole('textbox', { name: 'Order' }).click();
    await page.keyboard.press('Control+Delete');
    expect(await rows(page)).toBe(before);
    expect(await cell(page, 1, DRAWER).textContent()).toBe('kept');
    await page.context().close();
  });

  test('a change of the standard that is not applied yet is there again when its page is', async () => {
    const page = await opened(program());
    const standard = () => page.getByRole('button', { name: 'Shop standard' }).click();
    await standard();
    const field = page.locator('.document input[type="text"]').first();
    await field.fill('A name in work');
    await page.getByRole('button', { name: 'Bench' }).click();
    await standard();
    expect(await field.inputValue()).toBe('A name in work');
    await page.context().close();
  });

  test('saving takes the name that is being typed', async () => {
    const page = await opened(program());
    await page.getByRole('textbox', { name: 'Order' }).fill('Typed name');
    const download = page.waitForEvent('download');
    await page.keyboard.press('Control+s');
    expect((await download).suggestedFilename()).toContain('Typed name');
    await expect.poll(() => page.title()).toMatch(/^Typed name/);
    await page.context().close();
  });

  test('the files are begun once, however often the button is pressed', async () => {
    const page = await opened(program());
    let begun = 0;
    page.on('request', (request) => {
      if (`${request.url()} ${request.postData() ?? ''}`.includes('output.begin')) begun += 1;
    });
    await page.getByRole('button', { name: 'Files out' }).click();
    await page.getByRole('button', { name: /^Write the files/ }).dblclick();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await expect.poll(() => page.getByText('Cancelled.').count()).toBeGreaterThan(0);
    expect(begun).toBe(1);
    await page.context().close();
  });

  test('the screws look the same whichever stage was seen before', async () => {
    const page = await opened(program());
    await page.getByRole('button', { name: 'Screws' }).click();
    const list = page.locator('.parts-list').first();
    await list.waitFor();
    // The rule between the list and the drawing.
    const style = "getComputedStyle(document.querySelector('.parts-list')).borderRightStyle";
    expect(await page.evaluate(style)).toBe('solid');
    await page.context().close();
  });
}
