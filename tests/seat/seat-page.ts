import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import type { LengthUnit } from '../../core/order/types.ts';
import type { SeatScene } from '../../core/scene/types.ts';

const FOLDER = new URL('./harness/', import.meta.url).pathname;

/** An address that no name server knows: every file of it comes from the build. */
const ADDRESS = 'http://seat.test/';

export interface BuiltFile {
  readonly name: string;
  readonly text: string;
  /** Loaded with the page, and not only when a seat is looked at. */
  readonly first: boolean;
}

/** The page that shows one seat, bundled as the program is: the heavy part apart. */
export async function buildSeatPage(): Promise<readonly BuiltFile[]> {
  const built = await build({
    configFile: false,
    root: FOLDER,
    logLevel: 'error',
    build: { write: false, minify: false },
  });
  const outputs = Array.isArray(built)
    ? built.flatMap(({ output }) => output)
    : 'output' in built
      ? built.output
      : [];
  return outputs.map((file) =>
    file.type === 'chunk'
      ? { name: file.fileName, text: file.code, first: file.isEntry }
      : { name: file.fileName, text: String(file.source), first: true },
  );
}

const TYPES: Readonly<Record<string, string>> = { js: 'text/javascript', css: 'text/css', html: 'text/html' };

export interface SeatPage {
  readonly page: Page;
  /** What the page complained of: errors of scripts, and of the console. */
  readonly complaints: string[];
  /** Files that were asked for. */
  readonly asked: string[];
}

interface Opened {
  readonly width?: number;
  readonly height?: number;
  readonly reducedMotion?: 'reduce' | 'no-preference';
}

export async function openSeatPage(
  browser: Browser,
  files: readonly BuiltFile[],
  { width = 640, height = 660, reducedMotion = 'reduce' }: Opened = {},
): Promise<SeatPage> {
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: 1, reducedMotion });
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  await page.route(`${ADDRESS}**`, async (route) => {
    const name = new URL(route.request().url()).pathname.slice(1) || 'index.html';
    const file = files.find((one) => one.name === name);
    asked.push(name);
    await (file === undefined
      ? route.fulfill({ status: 404 })
      : route.fulfill({
          contentType: TYPES[name.split('.').at(-1) ?? ''] ?? 'text/plain',
          body: file.text,
        }));
  });
  await page.goto(ADDRESS);
  return { page, complaints, asked };
}

export interface Shown {
  readonly scene?: SeatScene | null;
  readonly unit?: LengthUnit;
  readonly theme?: 'light' | 'dark';
  readonly reducedMotion?: boolean;
}

/** Changes what the view is given. */
export const showSeat = (page: Page, shown: Shown): Promise<void> =>
  page.evaluate((given) => {
    const show: unknown = Reflect.get(globalThis, 'showSeat');
    if (typeof show === 'function') show(given);
  }, shown);

/** Waits until the seat is drawn in space: it is drawn flat until it can be. */
export const inSpace = (page: Page): Promise<unknown> =>
  page.waitForFunction(
    `document.querySelector('.seat-picture canvas') && !document.querySelector('.seat-flat')`,
    null,
    { timeout: 60_000 },
  );

/** Pictures drawn so far. */
export const framesOf = (page: Page): Promise<number> =>
  page.evaluate(() => Number(Reflect.get(globalThis, 'seatFrames')));

/** Waits until no picture has been drawn for a while, the last in space; how many there are. */
export async function settled(page: Page): Promise<number> {
  await inSpace(page);
  let before = -1;
  for (let tries = 0; tries < 60; tries += 1) {
    // What was asked for is drawn in the next of the browser's own frames.
    await page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))');
    const now = await framesOf(page);
    if (now > 0 && now === before) return now;
    before = now;
    await page.waitForTimeout(60);
  }
  throw new Error('the picture never came to rest');
}
