import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { build } from 'vite';
import { launchBrowser } from '../readers/browser.ts';

// The hook in a real page, with a comparer whose answers come when the test says so.

// Within the tree, so that React is found.
const folder = mkdtempSync(resolve('tests/renderer-2d/hook-'));
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const worker = (file: string) => JSON.stringify(resolve('renderer/worker', file));
  writeFileSync(
    join(folder, 'main.jsx'),
    `import { useState } from 'react';
     import { createRoot } from 'react-dom/client';
     import { flushSync } from 'react-dom';
     import { ComparerContext } from ${worker('comparer.ts')};
     import { useStandardComparison } from ${worker('useComparison.ts')};
     globalThis.asked = [];
     const comparer = {
       standard: (draft, tried) =>
         new Promise((answer) => globalThis.asked.push({ draft, tried, answer })),
     };
     const first = 'draft 1';
     function Shown() {
       const [{ draft, tried }, set] = useState({ draft: first, tried: null });
       globalThis.set = (more) => flushSync(() => set((now) => ({ ...now, ...more })));
       return <p>{useStandardComparison(draft, tried) ?? 'nothing'}</p>;
     }
     createRoot(document.body.appendChild(document.createElement('div'))).render(
       <ComparerContext value={comparer}><Shown /></ComparerContext>,
     );`,
  );
  const built = await build({
    configFile: false,
    root: folder,
    logLevel: 'silent',
    build: {
      write: false,
      rolldownOptions: {
        input: join(folder, 'main.jsx'),
        output: { format: 'iife', codeSplitting: false },
      },
    },
  });
  const [output] = Array.isArray(built) ? built.flatMap((one) => one.output) : [];
  const chunk = output ?? ('output' in built ? built.output[0] : undefined);
  browser = await launchBrowser();
  page = await browser.newPage();
  await page.setContent('<!doctype html><title>Hook</title>');
  await page.addScriptTag({ content: chunk?.type === 'chunk' ? chunk.code : '' });
}, 120_000);
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

const set = (props: Readonly<Record<string, unknown>>) => page.evaluate(`set(${JSON.stringify(props)})`);
const answer = (index: number, words: string) => page.evaluate(`asked[${index}].answer('${words}')`);
const shown = () => page.locator('p').textContent();
const asked = () => page.evaluate('asked.map(({ draft, tried }) => `${tried} on ${draft}`)');

describe('useStandardComparison', () => {
  test('shows the last answer until the new one is there, and asks for the newest only', async () => {
    expect(await shown()).toBe('nothing');
    await set({ tried: 'a' });
    await expect.poll(asked).toEqual(['a on draft 1']);
    await answer(0, 'what a does');
    await expect.poll(shown).toBe('what a does');
    for (const tried of ['b', 'c', 'd']) await set({ tried });
    await expect.poll(asked).toEqual(['a on draft 1', 'b on draft 1']);
    expect(await shown()).toBe('what a does');
    await answer(1, 'what b does');
    await expect.poll(asked).toEqual(['a on draft 1', 'b on draft 1', 'd on draft 1']);
    await answer(2, 'what d does');
    await expect.poll(shown).toBe('what d does');
  });

  test('asks again for another draft, and shows nothing once nothing is tried', async () => {
    await set({ draft: 'draft 2' });
    await expect.poll(asked).toContain('d on draft 2');
    await answer(3, 'what d does now');
    await expect.poll(shown).toBe('what d does now');
    await set({ tried: null });
    expect(await shown()).toBe('nothing');
  });
});
