import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { bundleCli } from './bundle.ts';
import { killSaves, randomOf } from './kill-saves.ts';
import { ORDER, temporaryFolder } from './temporary.ts';
import { faultsOf } from './whole-output.ts';

const folder = temporaryFolder();
const SEED = 20_311;

/** ms. Most of it is starting processes, which takes its time on a machine with other work. */
const LONGEST = 300_000;

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

/** `npm run kills` tries hundreds. */
const SAVE_KILLS = 40;
test(
  `a project's save killed ${SAVE_KILLS} times leaves the whole old or the whole new version; seed ${SEED}`,
  async () => {
    const { killed, unfinished, torn } = await killSaves(join(folder, 'saves'), SAVE_KILLS, randomOf(SEED));
    expect(torn).toEqual([]);
    expect(killed).toBe(SAVE_KILLS);
    // Else no kill fell into the writing, and the test would show nothing.
    expect(unfinished).toBeGreaterThan(0);
  },
  LONGEST,
);
