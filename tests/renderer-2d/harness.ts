import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll } from 'vitest';
import { launchBrowser } from '../readers/browser.ts';

const FOLDER = new URL('./harness/', import.meta.url).pathname;

interface Bundle {
  readonly script: string;
  readonly style: string;
}

interface Harness extends Bundle {
  readonly browser: Browser;
  /** Open pages by their scene, used again and again. */
  readonly pages: Map<string, Page>;
}

let bundle: Promise<Bundle> | null = null;

/** The views, bundled once for all files of tests that share their modules. */
const bundled = (): Promise<Bundle> => (bundle ??= bundleViews());

async function bundleViews(): Promise<Bundle> {
  const built = await build({
    configFile: false,
    root: FOLDER,
    logLevel: 'error',
    // As it is shipped: React is many times slower where it looks out for mistakes.
    define: { 'process.env.NODE_ENV': JSON.stringify('production') },
    oxc: { jsx: { runtime: 'automatic', development: false } },
    build: {
      write: false,
      minify: false,
      cssCodeSplit: false,
      rolldownOptions: { input: `${FOLDER}main.jsx`, output: { format: 'iife', codeSplitting: false } },
    },
  });
  const outputs = Array.isArray(built)
    ? built.flatMap(({ output }) => output)
    : 'output' in built
      ? built.output
      : [];
  const script = outputs.find((file) => file.type === 'chunk')?.code ?? '';
  const style = outputs
    .flatMap((file) => (file.type === 'asset' && file.fileName.endsWith('.css') ? [String(file.source)] : []))
    .join('\n');
  return { script, style };
}

/** Bundles the views and starts a browser. */
async function startHarness(): Promise<Harness> {
  const [views, browser] = await Promise.all([bundled(), launchBrowser()]);
  return { ...views, browser, pages: new Map() };
}

/** What opens pages with the views in the tests of a file; the browser lives as long as they do. */
export function pagesOfFile(): (scene?: Scene) => Promise<Page> {
  let harness: Harness | undefined;
  beforeAll(async () => {
    harness = await startHarness();
  });
  afterAll(() => harness?.browser.close());
  return (scene = {}) => {
    if (harness === undefined) throw new Error('the browser is started before the tests, not before that');
    return openPage(harness, scene);
  };
}

export interface Scene {
  readonly width?: number;
  readonly height?: number;
  readonly theme?: 'light' | 'dark';
  /** A browser's zoom: 2 makes everything twice as large in the same window. */
  readonly zoom?: number;
}

/** A page with the views loaded; one for each scene. Fails the test on any error of the page. */
async function openPage(harness: Harness, scene: Scene): Promise<Page> {
  const key = JSON.stringify(scene);
  const known = harness.pages.get(key);
  if (known !== undefined) return known;
  const { width = 1280, height = 800, theme = 'light', zoom = 1 } = scene;
  const page = await harness.browser.newPage({
    viewport: { width: Math.round(width / zoom), height: Math.round(height / zoom) },
    deviceScaleFactor: zoom,
    reducedMotion: 'reduce',
  });
  page.on('pageerror', (error) => {
    throw error;
  });
  await page.setContent(
    `<!doctype html><html lang="en" data-theme="${theme}"><head><title>Harness</title><style>${harness.style}</style>` +
      '<style>html,body{height:100%}main{height:100vh;overflow:auto;background:var(--panel)}#root{height:100%;min-height:0}</style></head>' +
      '<body><main><h1 class="app-hidden">Harness</h1><h2 class="app-hidden">Stage</h2><div id="root"></div></main></body></html>',
  );
  await page.addScriptTag({ content: harness.script });
  harness.pages.set(key, page);
  return page;
}

/** Shows a view with plain props. `set` maps a callback to the prop that it changes, as the store does. */
export const show = (
  page: Page,
  view: string,
  props: Readonly<Record<string, unknown>>,
  callbacks: readonly string[],
  set: Readonly<Record<string, string>> = {},
): Promise<void> =>
  page.evaluate(
    ([name, given, called, changes]) => {
      const harnessShow: unknown = Reflect.get(globalThis, 'show');
      if (typeof harnessShow === 'function') harnessShow(name, JSON.parse(given), called, changes);
    },
    [view, written(props), callbacks, set] as const,
  );

/** Changes props of the shown view. */
export const change = (page: Page, props: Readonly<Record<string, unknown>>): Promise<void> =>
  page.evaluate((given) => {
    const harnessChange: unknown = Reflect.get(globalThis, 'change');
    if (typeof harnessChange === 'function') harnessChange(JSON.parse(given));
  }, written(props));

/** Props as JSON: a whole design goes to the page many times sooner than piece by piece. */
const written = (props: Readonly<Record<string, unknown>>): string =>
  JSON.stringify(props, (name, value: unknown) => {
    if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${name} is no number of JSON`);
    return value;
  });

/** The callbacks that the view has called so far. */
export const calls = (page: Page): Promise<readonly (readonly [string, unknown])[]> =>
  page.evaluate(() => Reflect.get(globalThis, 'calls'));

/** By how many pixels the page is wider than its window, as it must not be at any zoom. */
export const sidewaysScroll = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const root: { scrollWidth: number; clientWidth: number } = Reflect.get(
      Reflect.get(globalThis, 'document'),
      'documentElement',
    );
    return root.scrollWidth - root.clientWidth;
  });
