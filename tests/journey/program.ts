import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { launchBrowser } from '../readers/browser.ts';

/** How the program is looked at, unless a test says otherwise. */
const LOOK = {
  viewport: { width: 1440, height: 900 },
  colorScheme: 'light',
  reducedMotion: 'reduce',
} as const satisfies BrowserContextOptions;

const ROOT = join(import.meta.dirname, '../..');

/** The program as people have it in a browser: built, served by its host, open in Chromium. */
export interface Program {
  readonly page: Page;
  readonly folder: string;
  /** What went wrong on the page; empty while all is well. */
  readonly problems: readonly string[];
  /** Another tab of the same program. */
  readonly reopen: () => Promise<Page>;
  /** A window with settings of its own, empty; and where the program is to be opened in it. */
  readonly window: (options: BrowserContextOptions) => Promise<Page>;
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Builds the page and the host, starts both, and waits until the demo order has been worked out. */
export async function startProgram(): Promise<Program> {
  for (const script of ['build:renderer', 'build:host']) {
    // The test's own NODE_ENV would build a page that is neither for people nor for development.
    const env = { ...process.env, NODE_ENV: 'production' };
    execFileSync('npm', ['run', '-s', script], { cwd: ROOT, env, stdio: 'inherit' });
  }
  const folder = mkdtempSync(join(tmpdir(), 'overhang-journey-'));
  const host = spawn(process.execPath, [join(ROOT, 'dist/host/main.js')], {
    stdio: ['ignore', 'pipe', 'inherit'],
    // Its own place for snapshots, so that no earlier run offers its work here.
    env: { ...process.env, XDG_STATE_HOME: folder },
  });
  const address = await addressOf(host);
  const browser: Browser = await launchBrowser();
  const context: BrowserContext = await browser.newContext({ ...LOOK, acceptDownloads: true });
  // A step is slow on a machine with other work; one that never comes is stopped.
  context.setDefaultTimeout(120_000);
  const problems: string[] = [];
  const openPage = async (): Promise<Page> => {
    const page = await context.newPage();
    page.on('pageerror', (problem) => problems.push(problem.message));
    page.on('console', (message) => {
      if (message.type() === 'error') problems.push(message.text());
    });
    await page.goto(address);
    await isRunning(page);
    return page;
  };
  return {
    window: async (options) => (await browser.newContext({ ...LOOK, ...options })).newPage(),
    address,
    page: await openPage(),
    folder,
    problems,
    reopen: openPage,
    async close() {
      await browser.close();
      host.kill('SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Ends when the program has taken the place of the screen that the page is built with. */
const isRunning = (page: Page): Promise<void> =>
  page.locator('#root > :not([inert])').getByRole('grid').waitFor();

/** The address that the host prints. */
const addressOf = (host: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    host.stdout?.on('data', (data: Buffer) => {
      said += data.toString('utf8');
      const [address] = /http:\/\/127\.0\.0\.1:\d+\S*/.exec(said) ?? [];
      if (address !== undefined) resolve(address);
    });
    host.on('exit', () => reject(new Error(`the host ended: ${said}`)));
  });
