import { join } from 'node:path';
import { expect, test } from 'vitest';
import { killSaves, randomOf } from './kill-saves.ts';
import { temporaryFolder } from './temporary.ts';

const folder = temporaryFolder();

/** How often; `KILLS=5000` for a night. */
const KILLS = Number(process.env['KILLS'] ?? '500');
const SEED = Number(process.env['KILL_SEED'] ?? Math.floor(Date.now() / 86_400_000));

test(
  'kills: a save is killed at random moments',
  async () => {
    const begun = performance.now();
    const { killed, unfinished, versions, torn } = await killSaves(
      join(folder, 'saves'),
      KILLS,
      randomOf(SEED),
    );
    const seconds = ((performance.now() - begun) / 1000).toFixed(0);
    process.stdout.write(
      `${killed} kills in ${seconds} s, seed ${SEED}: ${versions.join(' and ')} left the one and the other version whole, ${unfinished} fell into the writing, ${torn.length} tore something\n`,
    );
    expect(torn).toEqual([]);
  },
  24 * 3_600_000,
);
