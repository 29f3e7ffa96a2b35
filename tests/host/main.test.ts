import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { build } from 'vite';
import { temporaryFolder } from '../cli/temporary.ts';

const folder = temporaryFolder();
let running: ChildProcess | null = null;

beforeAll(async () => {
  await build({ configFile: 'vite.host.config.ts', build: { outDir: join(folder, 'host') } });
  mkdirSync(join(folder, 'renderer'));
  writeFileSync(join(folder, 'renderer/index.html'), '<title>Built</title>');
});
afterEach(() => void running?.kill('SIGKILL'));

/** Starts the built host, and waits until it has said something. */
async function start(...words: readonly string[]) {
  const child = spawn(process.execPath, [join(folder, 'host/main.js'), ...words], {
    env: { ...process.env, XDG_STATE_HOME: join(folder, 'state') },
  });
  running = child;
  const said = { out: '', err: '' };
  child.stdout.on('data', (text) => (said.out += String(text)));
  child.stderr.on('data', (text) => (said.err += String(text)));
  const ended: Promise<readonly unknown[]> = once(child, 'exit');
  await Promise.race([once(child.stdout, 'data'), ended]);
  return { child, said, ended };
}

describe('the built browser host', () => {
  test.skipIf(process.platform === 'win32').each(['SIGINT', 'SIGTERM'] as const)(
    'prints where it is, serves the page, and ends cleanly on %s',
    async (signal) => {
      const { child, said, ended } = await start();
      const [, address = ''] =
        /^Overhang is at (http:\/\/127\.0\.0\.1:\d+\/#key=[0-9a-f]{64})\nStop it with Ctrl\+C\.\n$/.exec(
          said.out,
        ) ?? [];
      expect(await (await fetch(address)).text()).toBe('<title>Built</title>');
      child.kill(signal);
      expect(await ended).toEqual([0, null]);
      expect(said.err).toBe('');
    },
  );

  test('says what is wrong with its call', async () => {
    const { said, ended } = await start('--port', 'http');
    expect(await ended).toEqual([2, null]);
    expect(said).toEqual({ out: '', err: 'overhang: --port is "http"; write 0 to 65535\n' });
  });
});
