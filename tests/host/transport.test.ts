import { unzipSync } from 'fflate';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { serve, type Host } from '../../electron/host/serve.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { TAB } from '../messages/tabs.ts';
import { launchBrowser } from '../readers/browser.ts';
import { buildTransportPage } from './transport-page.ts';

// The renderer's way to the platform, in a page of its own that is served as the program is.

const folder = temporaryFolder();
let host: Host;
let browser: Browser;
let page: Page;
let problems: string[] = [];

beforeAll(async () => {
  const built = await buildTransportPage(
    folder,
    (transport) =>
      `import { send } from ${transport('send.ts')};
       import { listenForDrops, openDropped } from ${transport('open-dropped.ts')};
       import { listenForActions, listenForOffers } from ${transport('notices.ts')};
       Object.assign(window, { send, dropped: [], ends: [listenForActions(() => 0), listenForOffers(() => 0)] });
       window.endDrops = listenForDrops(async (file) => window.dropped.push(await openDropped(file)));`,
  );
  host = await serve({ page: built, recovery: join(folder, 'recovery') });
  browser = await launchBrowser();
  page = await browser.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  page.on('pageerror', (problem) => problems.push(problem.message));
});
afterAll(async () => {
  await browser.close();
  await host.stop();
});

beforeEach(async () => {
  problems = [];
  page.removeAllListeners('dialog');
  await page.unrouteAll();
  await page.goto(host.address);
});

/** Sends a message from within the page. */
const send = (channel: string, request: unknown): Promise<unknown> =>
  page.evaluate(`window.send(${JSON.stringify(channel)}, ${JSON.stringify(request)})`);

const csv = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

describe('send, in a browser', () => {
  test('reaches the host under the content security policy', async () => {
    expect(await send('app.about', {})).toMatchObject({ ok: true, platform: 'browser' });
    expect(await send('document.recent', {})).toEqual({ ok: true, documents: [] });
    expect(problems).toEqual([]);
  });

  test('document.open lets the user choose a file and gives back what is in it', async () => {
    const chooser = page.waitForEvent('filechooser');
    const opened = send('document.open', { source: null });
    await (await chooser).setFiles(csv('Küche 2.csv', 'cabinet;½\n'));
    expect(await opened).toEqual({
      ok: true,
      cancelled: false,
      name: 'Küche 2.csv',
      handle: null,
      text: 'cabinet;½\n',
    });
  });

  test('document.open tells what is wrong with a file', async () => {
    const chooser = page.waitForEvent('filechooser');
    const opened = send('document.open', { source: null });
    await (
      await chooser
    ).setFiles({ name: 'a.csv', mimeType: 'text/csv', buffer: Buffer.from([0xff, 0xfe, 0x61]) });
    expect(await opened).toEqual({
      ok: false,
      reason: 'a.csv: The file is UTF-16 text; save it as CSV UTF-8.',
    });
  });

  test('document.save downloads the file under its name', async () => {
    const coming = page.waitForEvent('download');
    const saved = await send('document.save', {
      tab: TAB,
      handle: null,
      suggestedName: 'Küche 2.overhang',
      text: '{"½":1}',
    });
    const download = await coming;
    expect(saved).toMatchObject({ ok: true, name: 'Küche 2.overhang', handle: null });
    expect(download.suggestedFilename()).toBe('Küche 2.overhang');
    expect(readFileSync(await download.path(), 'utf8')).toBe('{"½":1}');
    expect(await page.title()).toBe('T');
  });

  test('output.finish downloads the cut files as a zip', async () => {
    const begun = await send('output.begin', { suggestedName: 'jigs' });
    const job = typeof begun === 'object' && begun !== null && 'job' in begun ? begun.job : '';
    await send('output.write', { job, path: 'dxf/a_mm.dxf', content: 'EOF' });
    const coming = page.waitForEvent('download');
    expect(await send('output.finish', { job })).toMatchObject({ ok: true, place: 'jigs.zip' });
    const download = await coming;
    expect(download.suggestedFilename()).toBe('jigs.zip');
    expect(Object.keys(unzipSync(readFileSync(await download.path())))).toEqual(['jigs/dxf/a_mm.dxf']);
  });

  test('document.changed lets the browser ask before a tab with unsaved work is left', async () => {
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await send('document.changed', { tab: TAB, unsaved: true, name: 'a' });
    // Browsers ask only once the page was touched.
    await page.mouse.click(10, 10);
    await page.reload();
    expect(asked).toEqual(['beforeunload']);
    await send('document.changed', { tab: TAB, unsaved: true, name: 'a' });
    await send('document.changed', { tab: TAB, unsaved: false, name: 'a' });
    await page.mouse.click(10, 10);
    await page.reload();
    expect(asked).toEqual(['beforeunload']);
  });

  test('a host that is gone is told in words, and nothing is thrown', async () => {
    await page.route('**/message/**', (route) => route.abort());
    await page.route('**/upload**', (route) => route.abort());
    const gone = {
      ok: false,
      reason: 'The browser host does not answer; start it again, this page stays as it is.',
    };
    expect(
      await send('document.save', { tab: TAB, handle: null, suggestedName: 'a.json', text: '' }),
    ).toEqual(gone);
    expect(await send('document.kept', { tab: TAB, open: [] })).toEqual({ ok: true, document: null });
    const chooser = page.waitForEvent('filechooser');
    const opened = send('document.open', { source: null });
    await (await chooser).setFiles(csv('a.csv', 'a'));
    expect(await opened).toEqual(gone);
  });
});

describe('listenForDrops', () => {
  /** Drops a file on the page as a browser does; whether the page kept the browser from showing it. */
  const drop = (name: string, text: string): Promise<unknown> =>
    page.evaluate(`(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([${JSON.stringify(text)}], ${JSON.stringify(name)}));
      const event = (kind) => new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true });
      return ['dragover', 'drop'].map((kind) => !document.body.dispatchEvent(event(kind)));
    })()`);

  test('opens a file that is dropped anywhere, and keeps the browser from showing it', async () => {
    expect(await drop('a.csv', 'cabinet')).toEqual([true, true]);
    await expect.poll(() => page.evaluate('window.dropped.length')).toBe(1);
    expect(await page.evaluate('window.dropped[0]')).toMatchObject({
      ok: true,
      name: 'a.csv',
      text: 'cabinet',
    });
  });

  test('lets text be dropped into a field', async () => {
    const kept = await page.evaluate(`(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.setData('text/plain', '1 7/16');
      return !document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    })()`);
    expect(kept).toBe(false);
  });

  test('ends when it is told to', async () => {
    await page.evaluate('window.endDrops()');
    expect(await drop('a.csv', 'cabinet')).toEqual([false, false]);
  });
});
