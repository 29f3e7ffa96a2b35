import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary.ts';
import { TAB } from '../messages/tabs.ts';
import { electronBinary } from './binary.ts';
import { answerDialogs, buildDesktop, jobOf, startDesktop, type Desktop } from './start.ts';

// The desktop program itself. Needs Electron's binary, and on Linux a display: xvfb-run npx vitest run tests/desktop

const binary = electronBinary();
const display =
  process.platform !== 'linux' ||
  process.env['DISPLAY'] !== undefined ||
  process.env['WAYLAND_DISPLAY'] !== undefined;
const missing =
  binary === null ? "Electron's binary is not installed" : display ? null : 'there is no display';
if (missing !== null) console.log(`The desktop suite is skipped: ${missing}.`);

const root = temporaryFolder();
let next = 0;
let running: Desktop | null = null;

const dataFolder = (): string => {
  const folder = join(root, String((next += 1)));
  mkdirSync(folder);
  return folder;
};

async function start(files: readonly string[] = [], data = dataFolder()) {
  const desktop = await startDesktop(binary ?? '', data, files);
  running = desktop;
  return { ...desktop, data };
}

describe.skipIf(missing !== null)('the desktop program', () => {
  beforeAll(buildDesktop);
  afterEach(async () => {
    await running?.program.evaluate(({ app }) => app.exit(0)).catch(() => undefined);
    running = null;
  });

  test('shows its page through its own scheme, sandboxed and isolated', async () => {
    const { page, send } = await start();
    expect(page.url()).toBe('app://bundle/index.html');
    expect(
      await page.evaluate(
        "[typeof require, typeof process, typeof module, 'opener' in window && window.opener]",
      ),
    ).toEqual(['undefined', 'undefined', 'undefined', null]);
    expect(await send('app.about', {})).toMatchObject({ ok: true, platform: 'desktop' });
  });

  test('keeps the page in its place: no navigation, no window, no foreign fetch, no evaluation', async () => {
    const { page, program } = await start();
    await page.evaluate("window.location.href = 'https://example.invalid/'");
    expect(await page.evaluate("window.open('https://example.invalid/')")).toBeNull();
    const outcomes = await page.evaluate(`Promise.all([
      fetch('https://example.invalid/').then(() => 'came', () => 'blocked'),
      Promise.resolve().then(() => new Function('return 1')()).then(() => 'ran', () => 'blocked'),
      navigator.permissions.query({ name: 'geolocation' }).then(({ state }) => state),
    ])`);
    expect(outcomes).toEqual(['blocked', 'blocked', 'denied']);
    expect(page.url()).toBe('app://bundle/index.html');
    expect(await program.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows().length)).toBe(1);
  });

  test('opens, saves and writes cut files through the dialogs of the system', async () => {
    const { data, program, send } = await start();
    const [table, project] = [join(data, 'a.csv'), join(data, 'a.overhang')];
    writeFileSync(table, 'cabinet');
    await answerDialogs(program, { open: table, save: project });
    expect(await send('document.open', { source: null })).toMatchObject({ ok: true, text: 'cabinet' });
    expect(
      await send('document.save', { tab: null, handle: null, suggestedName: 'a.overhang', text: '{}' }),
    ).toMatchObject({ ok: true });
    expect(readFileSync(project, 'utf8')).toBe('{}');
    const place = join(data, 'out');
    mkdirSync(place);
    await answerDialogs(program, { open: place });
    const job = jobOf(await send('output.begin', { suggestedName: 'jigs' }));
    await send('output.write', { job, path: 'dxf/a_mm.dxf', content: 'EOF' });
    expect(await send('output.finish', { job })).toEqual({ ok: true, place: join(place, 'jigs') });
    expect(readFileSync(join(place, 'jigs/dxf/a_mm.dxf'), 'utf8')).toBe('EOF');
  });

  test('a second start hands its file to the first and ends', async () => {
    const { data, page } = await start();
    await page.evaluate(
      'window.offered = []; window.overhang.onOffered((handle) => window.offered.push(handle))',
    );
    writeFileSync(join(data, 'b.csv'), 'cabinet');
    await expect(startDesktop(binary ?? '', data, [join(data, 'b.csv')])).rejects.toThrow(
      /closed|exit|launch/i,
    );
    await expect.poll(() => page.evaluate('window.offered.length')).toBe(1);
  });

  test('unsaved work: keep open stays, discard closes', async () => {
    const { program, send } = await start();
    await send('document.changed', { tab: TAB, unsaved: true, name: 'Kitchen' });
    const close = () =>
      program.evaluate(({ BrowserWindow }) =>
        BrowserWindow.getAllWindows().forEach((window) => window.close()),
      );
    const windows = () => program.windows().length;
    await answerDialogs(program, { box: 2 });
    await close();
    expect(windows()).toBe(1);
    await answerDialogs(program, { box: 1 });
    const ended = new Promise((resolve) => program.process().once('exit', resolve));
    await close();
    expect(await ended).toBe(0);
    running = null;
  });

  test('work that was kept outlasts a crash of the program', async () => {
    const { data, program, send } = await start();
    await send('document.keep', { tab: TAB, name: 'Kitchen', handle: null, text: '{"a":1}' });
    const ended = new Promise((resolve) => program.process().once('exit', resolve));
    program.process().kill('SIGKILL');
    await ended;
    await start([], data);
    // The page has asked already; what was left stays until it is settled, under the page's own id.
    const kept = () =>
      readdirSync(join(data, 'recovery')).map((name) => readFileSync(join(data, 'recovery', name), 'utf8'));
    await expect.poll(kept).toEqual([expect.stringContaining('{\\"a\\":1}')]);
  });
});
