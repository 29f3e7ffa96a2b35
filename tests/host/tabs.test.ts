import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { serve, type Host } from '../../electron/host/serve.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { launchBrowser } from '../readers/browser.ts';
import { buildTransportPage } from './transport-page.ts';

// Tabs of a real browser at the host: who they are, and whose unsaved work they get.

const folder = temporaryFolder();
let host: Host;
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
  const built = await buildTransportPage(
    folder,
    (transport) =>
      `import { send } from ${transport('send.ts')};
       import { openTabs, ownTab } from ${transport('tab.ts')};
       Object.assign(window, { send, ownTab, openTabs });`,
  );
  host = await serve({ page: built, recovery: join(folder, 'recovery') });
  browser = await launchBrowser();
  context = await browser.newContext();
});
afterAll(async () => {
  await browser.close();
  await host.stop();
});

const openTab = async (address = host.address): Promise<Page> => {
  const page = await context.newPage();
  await page.goto(address);
  return page;
};
const tabIn = async (page: Page) =>
  z.object({ id: z.string(), browser: z.string() }).parse(await page.evaluate('window.ownTab()'));
const keep = (page: Page, text: string) =>
  page.evaluate(
    `window.ownTab().then((tab) => window.send('document.keep', { tab, name: 'a', handle: null, text: ${JSON.stringify(text)} }))`,
  );
const kept = async (page: Page): Promise<string | null> => {
  const reply = await page.evaluate(
    "(async () => window.send('document.kept', { tab: await window.ownTab(), open: await window.openTabs() }))()",
  );
  return (
    z.object({ document: z.object({ text: z.string() }).nullable() }).parse(reply).document?.text ?? null
  );
};

describe('ownTab', () => {
  test('is the same when the page is loaded again, and another in another tab of the same browser', async () => {
    const [one, two] = [await openTab(), await openTab()];
    const [first, second] = [await tabIn(one), await tabIn(two)];
    expect(second.id).not.toBe(first.id);
    expect(second.browser).toBe(first.browser);
    for (let time = 0; time < 3; time += 1) {
      await one.reload();
      expect(await tabIn(one)).toEqual(first);
    }
    await Promise.all([one.close(), two.close()]);
  });

  test('is another in the copy of a tab, which begins with the same storage', async () => {
    const one = await openTab();
    const { id } = await tabIn(one);
    const copy = await openTab();
    await copy.evaluate(`sessionStorage.setItem('overhang-tab', ${JSON.stringify(id)})`);
    await copy.reload();
    expect((await tabIn(copy)).id).not.toBe(id);
    await Promise.all([one.close(), copy.close()]);
  });

  test('takes no id from the storage that is none', async () => {
    const one = await openTab();
    await tabIn(one);
    await one.evaluate("sessionStorage.setItem('overhang-tab', '../../etc')");
    await one.reload();
    expect((await tabIn(one)).id).toMatch(/^[0-9a-f-]{36}$/);
    await one.close();
  });
});

describe('the snapshot of unsaved work', () => {
  test('is each tab’s own while it is open, and offered to a new tab when it was closed', async () => {
    const [one, two] = [await openTab(), await openTab()];
    await keep(one, 'one');
    await keep(two, 'two');
    await Promise.all([one.reload(), two.reload()]);
    expect(await kept(one)).toBe('one');
    expect(await kept(two)).toBe('two');
    const three = await openTab();
    expect(await kept(three)).toBeNull();
    await one.close();
    const four = await openTab();
    expect(await kept(four)).toBe('one');
    expect(await kept(two)).toBe('two');
    await Promise.all([two.close(), three.close(), four.close()]);
  });
});

describe('the key', () => {
  test('is taken out of the address, and other tabs have it without', async () => {
    const one = await openTab();
    expect(await one.evaluate("window.send('app.about', {})")).toMatchObject({ platform: 'browser' });
    expect(one.url()).toBe(`${new URL(host.address).origin}/`);
    const two = await openTab(new URL(host.address).origin);
    expect(await two.evaluate("window.send('app.about', {})")).toMatchObject({
      platform: 'browser',
      version: expect.stringMatching(/./),
    });
    await Promise.all([one.close(), two.close()]);
  });

  test('is asked for of a browser that has never had it, in words', async () => {
    const stranger = await browser.newContext();
    const page = await stranger.newPage();
    await page.goto(new URL(host.address).origin);
    const begun = await page.evaluate("window.send('output.begin', { suggestedName: 'a' })");
    expect(z.object({ ok: z.literal(false), reason: z.string() }).parse(begun).reason).toContain(
      'open the whole address that the host printed',
    );
    await stranger.close();
  });
});
