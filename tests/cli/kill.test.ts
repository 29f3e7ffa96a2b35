import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from 'vite';
import { expect, test } from 'vitest';
import { bundleCli } from './bundle.ts';
import { ORDER, temporaryFolder } from './temporary.ts';
import { faultsOf } from './whole-output.ts';

const folder = temporaryFolder();
const SEED = 20_311;

/** ms. Most of it is starting processes, which takes its time on a machine with other work. */
const LONGEST = 300_000;

/** Numbers from 0 to 1, the same for the same seed (the constants are those of Numerical Recipes, from memory). */
function randomOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const MAKE_KILLS = 25;
test(
  `overhang make killed ${MAKE_KILLS} times leaves each output whole or absent, and the next run clears up; seed ${SEED}`,
  async () => {
    const main = await bundleCli(folder);
    const orders = ['one', 'two'].map((name) => join(folder, `${name}.csv`));
    for (const order of orders) writeFileSync(order, ORDER.split('\n').slice(0, 2).join('\n'));
    const random = randomOf(SEED);
    const out = { folders: join(folder, 'folders'), zips: join(folder, 'zips') };
    /** Each round makes all anew with its date, so that whole outputs are replaced. */
    const words = (round: number): readonly string[] => {
      const date = `2031-01-${String((round % 28) + 1).padStart(2, '0')}`;
      const little = ['--formats', 'svg', '--paper', 'none', '--only-jigs', 'S1', '--date', date];
      const place = round % 3 === 2 ? ['--zip', '--out', out.zips] : ['--out', out.folders];
      return [main, 'make', ...orders, '--jobs', '2', ...little, ...place];
    };
    const visible = () =>
      Object.values(out).flatMap((place) =>
        readdirSync(place)
          .filter((name) => !name.startsWith('.'))
          .map((name) => join(place, name)),
      );
    const hidden = () =>
      Object.values(out).flatMap((place) => readdirSync(place).filter((name) => name.startsWith('.')));

    let whole = Infinity;
    for (const round of [0, 2]) {
      const begun = performance.now();
      expect(spawnSync(process.execPath, words(round), { encoding: 'utf8' }).stderr).toBe('');
      whole = Math.min(whole, performance.now() - begun);
    }
    let [killed, left] = [0, 0];
    // A run that ends before its time is no kill; such are few.
    for (let round = 3; killed < MAKE_KILLS && round < 6 * MAKE_KILLS; round += 1) {
      const before = new Set(hidden());
      const child = spawn(process.execPath, words(round), { stdio: 'ignore' });
      const ended = once(child, 'exit');
      // Every other kill waits until something is being written; the others come whenever they come.
      if (round % 2 === 0) {
        while (child.exitCode === null && hidden().every((name) => before.has(name))) await wait(1);
        await Promise.race([wait(40 * random()), ended]);
      } else await Promise.race([wait((0.25 + 0.75 * random()) * whole), ended]);
      child.kill('SIGKILL');
      await ended;
      if (child.signalCode === 'SIGKILL') killed += 1;
      left += hidden().length > 0 ? 1 : 0;
      for (const place of visible()) expect(faultsOf(place), `${place} after round ${round}`).toEqual([]);
    }
    expect(killed).toBe(MAKE_KILLS);
    // Else no kill fell into the writing, and the test would show nothing.
    expect(left).toBeGreaterThan(0);
    for (const round of [0, 2]) expect(spawnSync(process.execPath, words(round)).status).toBe(0);
    expect(hidden()).toEqual([]);
    expect(visible()).toHaveLength(2 * orders.length);
    for (const place of visible()) expect(faultsOf(place)).toEqual([]);
  },
  LONGEST,
);

const SAVE_KILLS = 100;
test(
  `saveFile killed ${SAVE_KILLS} times leaves the whole old or the whole new version; seed ${SEED}`,
  async () => {
    const SIZE = 400_000;
    const place = join(folder, 'saved');
    mkdirSync(place);
    await build({
      configFile: false,
      logLevel: 'silent',
      build: {
        ssr: resolve('electron/files/save-file.ts'),
        outDir: join(folder, 'built'),
        rolldownOptions: { output: { entryFileNames: 'save-file.mjs' } },
      },
    });
    const saver = (file: string) => `
    import { saveFile } from ${JSON.stringify(join(folder, 'built/save-file.mjs'))};
    const turns = ['1', '2'].map((sign) => Buffer.alloc(${SIZE}, sign));
    for (let turn = 0; ; turn += 1) {
      await saveFile(${JSON.stringify(file)}, turns[turn % 2]);
      if (turn === 0) process.stdout.write('saved');
    }`;
    const random = randomOf(SEED);
    let [killed, left] = [0, 0];
    const isWhole = (text: string) => text.length === SIZE && (/^1+$/.test(text) || /^2+$/.test(text));
    const lane = async (name: string, kills: number): Promise<void> => {
      const file = join(place, name, 'order.overhang');
      mkdirSync(join(place, name));
      for (let round = 0; round < kills; round += 1) {
        const child = spawn(process.execPath, ['--input-type=module', '--eval', saver(file)]);
        const ended = once(child, 'exit');
        await once(child.stdout, 'data');
        await wait(random() * 20);
        child.kill('SIGKILL');
        await ended;
        if (child.signalCode === 'SIGKILL') killed += 1;
        const text = readFileSync(file, 'utf8');
        expect(isWhole(text), `${name}, torn in round ${round}: ${text.length} characters`).toBe(true);
        // What the kill before left was cleared by the saves since: one at most is of this kill.
        const others = readdirSync(join(place, name)).filter((entry) => entry !== 'order.overhang');
        expect(others.length).toBeLessThanOrEqual(1);
        left += others.length;
      }
    };
    await Promise.all(['a', 'b', 'c', 'd'].map((name) => lane(name, SAVE_KILLS / 4)));
    expect(killed).toBe(SAVE_KILLS);
    expect(left).toBeGreaterThan(0);
  },
  LONGEST,
);
