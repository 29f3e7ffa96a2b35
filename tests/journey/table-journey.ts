import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { MESSAGES } from '../../shared/contract/messages.ts';
import type { Program } from './program.ts';

/** The names of columns whose cells are changed here, with their places among all cells of a row. */
const AT = { drawer: 3, openingWidth: 10, room: 12 } as const;

const cell = (page: Page, row: number, column: keyof typeof AT) =>
  page.getByRole('row').nth(row).getByRole('gridcell').nth(AT[column]);

const textOf = async (page: Page, row: number, column: keyof typeof AT) =>
  (await cell(page, row, column).textContent()) ?? '';

const shows = (page: Page, row: number, column: keyof typeof AT, text: string) =>
  expect.poll(() => textOf(page, row, column)).toBe(text);

/** What has the keyboard, as row of the table (the head is 1) and text; null when it is not in the table. */
const focused = (page: Page): Promise<unknown> =>
  page.evaluate(`(() => {
    const { activeElement } = document;
    const row = activeElement.closest('[role=row]');
    if (row === null) return activeElement.getAttribute('role');
    return { row: Number(row.getAttribute('aria-rowindex')) - 1, text: activeElement.value ?? activeElement.textContent };
  })()`);

/** How many elements of the table the Tab key stops at. */
const stops = (page: Page): Promise<unknown> =>
  page.evaluate(`[document.querySelector('[role=grid]'), ...document.querySelectorAll('[role=grid] *')]
    .filter((element) => element.matches('[tabindex="0"], input, button')).length`);

const rowCount = async (page: Page): Promise<number> =>
  Number(await page.getByRole('grid').getAttribute('aria-rowcount')) - 1;

const paste = (page: Page, text: string): Promise<unknown> =>
  page.evaluate(`(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', ${JSON.stringify(text)});
    document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  })()`);

const press = (page: Page, name: string) => page.getByRole('button', { name }).first().click();

/** A window of the demo order; what a window before it left unsaved is offered to it and left. */
async function opened(program: Program): Promise<Page> {
  const page = await program.window({});
  page.setDefaultTimeout(120_000);
  const kept = page.waitForResponse(/document\.kept/);
  await page.goto(program.address);
  const { document } = MESSAGES['document.kept'].reply.parse(await (await kept).json());
  if (document !== null) await press(page, 'Leave it');
  await page.locator('#root > :not([inert])').getByRole('gridcell').first().waitFor();
  return page;
}

/** The table of the order as hands use it: keys go where the eye is, and nothing typed is lost. */
export function tableJourney(program: () => Program): void {
  test('what is typed goes into the row that is picked, however it was picked', async () => {
    const page = await opened(program());
    const second = await textOf(page, 2, 'drawer');
    const first = await textOf(page, 1, 'drawer');
    await cell(page, 2, 'drawer').click();
    await page.keyboard.press('Control+Enter');
    await expect.poll(() => focused(page)).toEqual({ row: 3, text: '' });
    await page.keyboard.type('NEW');
    await page.keyboard.press('Enter');
    await shows(page, 3, 'drawer', 'NEW');
    expect(await textOf(page, 2, 'drawer')).toBe(second);

    await cell(page, 1, 'drawer').click();
    await page.keyboard.press('Control+ArrowDown');
    await page.keyboard.press('Control+ArrowDown');
    await page.keyboard.type('third');
    await page.keyboard.press('Enter');
    await shows(page, 3, 'drawer', 'third');
    expect(await textOf(page, 1, 'drawer')).toBe(first);
    // Another cell clicked while one is being changed: the change stays, and the click counts.
    await cell(page, 1, 'drawer').click();
    await page.keyboard.type('typed');
    await cell(page, 4, 'room').click();
    await shows(page, 1, 'drawer', 'typed');
    expect(await focused(page)).toEqual({ row: 4, text: await textOf(page, 4, 'room') });
    await page.context().close();
  });

  test('Escape puts back what was in a cell, and undo in its field takes back letters alone', async () => {
    const page = await opened(program());
    const width = await textOf(page, 1, 'openingWidth');
    expect(width).not.toBe('');
    await cell(page, 1, 'openingWidth').click();
    await page.keyboard.type('7');
    await page.keyboard.press('Escape');
    await shows(page, 1, 'openingWidth', width);
    expect(await focused(page)).toEqual({ row: 1, text: width });

    await cell(page, 2, 'drawer').click();
    await page.keyboard.type('kept');
    await page.keyboard.press('Enter');
    await cell(page, 1, 'drawer').dblclick();
    await page.keyboard.press('End');
    await page.keyboard.type('xyz');
    const field = page.locator('.order-editor');
    const full = await field.inputValue();
    await page.keyboard.press('Control+Z');
    await expect.poll(() => field.inputValue()).not.toBe(full);
    const left = await field.inputValue();
    await page.keyboard.press('Enter');
    await shows(page, 1, 'drawer', left);
    expect(await textOf(page, 2, 'drawer')).toBe('kept');
    await page.context().close();
  });

  test('the keyboard stays in the table when its cell goes away or out of sight', async () => {
    const page = await opened(program());
    const all = await rowCount(page);
    const third = await textOf(page, 3, 'drawer');
    await cell(page, 2, 'drawer').click();
    await page.keyboard.press('Control+Delete');
    await expect.poll(() => rowCount(page)).toBe(all - 1);
    expect(await focused(page)).toEqual({ row: 2, text: third });
    expect(await stops(page)).toBe(1);

    // Rows that a paste has added go away beneath the keyboard.
    await page.keyboard.press('Control+End');
    await page.keyboard.press('Home');
    await paste(page, 'p1\np2\np3\n');
    await page.keyboard.press('Control+End');
    await page.keyboard.press('Home');
    await expect.poll(() => focused(page)).toEqual({ row: all + 1, text: 'p3' });
    await page.keyboard.press('Control+Z');
    await expect.poll(() => rowCount(page)).toBe(all - 1);
    expect(await focused(page)).toMatchObject({ row: all - 1 });
    expect(await stops(page)).toBe(1);

    await page.keyboard.press('Control+Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.type('long name');
    const scrollTo = (top: number) =>
      page.evaluate(`document.querySelector('[role=grid]').scrollTop = ${top}`);
    await scrollTo(100_000);
    await page.locator(`[role=row][aria-rowindex="${all}"]`).waitFor();
    expect(await focused(page)).toEqual({ row: 1, text: 'long name' });
    await page.keyboard.type('r');
    await page.keyboard.press('Escape');
    await scrollTo(100_000);
    await page.locator(`[role=row][aria-rowindex="${all}"]`).waitFor();
    expect(await focused(page)).toMatchObject({ row: 1 });
    expect(await stops(page)).toBe(1);

    const columns = page.getByRole('button', { name: 'All columns' });
    await columns.click();
    await page.locator('.order-grid').getByRole('gridcell').first().waitFor();
    await cell(page, 1, 'drawer').click();
    await page.keyboard.press('End');
    await columns.click();
    await expect.poll(() => page.getByRole('columnheader').count()).toBe(13);
    expect(await stops(page)).toBe(1);
    await page.context().close();
  });

  test('a row stays shown while it is mended, though only those that need attention are', async () => {
    const page = await opened(program());
    const all = await rowCount(page);
    await cell(page, 5, 'openingWidth').click();
    const width = await textOf(page, 5, 'openingWidth');
    await page.keyboard.type('wide');
    await page.keyboard.press('Enter');
    await page.locator('.order-state-fault').first().waitFor();
    await cell(page, 5, 'drawer').click();
    await press(page, 'Needs attention');
    await expect.poll(() => rowCount(page)).toBeLessThan(all);
    const shown = await rowCount(page);
    const picked = page.locator('.order-picked');
    await picked.locator('.order-state-fault').waitFor();
    await picked.getByRole('gridcell').nth(AT.openingWidth).click();
    await page.keyboard.type(width);
    // Long enough for the order to be worked out anew between the letters.
    await picked.locator('.order-state-fault').waitFor({ state: 'detached' });
    await page.waitForTimeout(500);
    expect(await page.locator('.order-editor').inputValue()).toBe(width);
    expect(await rowCount(page)).toBe(shown);
    await page.context().close();
  });

  test('cells are pasted into an empty order', async () => {
    const page = await opened(program());
    await cell(page, 1, 'drawer').click();
    for (let left = await rowCount(page); left > 0; left -= 1) await page.keyboard.press('Control+Delete');
    await expect.poll(() => rowCount(page)).toBe(0);
    expect(await focused(page)).toBe('grid');
    expect(await stops(page)).toBe(1);
    await paste(page, 'B1\ttop\nB1\tmiddle\n');
    await shows(page, 1, 'drawer', 'top');
    await shows(page, 2, 'drawer', 'middle');
    expect(await focused(page)).toMatchObject({ row: 1 });
    expect(await stops(page)).toBe(1);
    await page.context().close();
  });
}
