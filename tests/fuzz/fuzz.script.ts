import { expect, test } from 'vitest';
import { corpus } from './corpus.ts';
import { PARSERS } from './parsers.ts';

/** Inputs for a parser of weight 1; `FUZZ_RUNS=100000` for a night. */
const RUNS = Number(process.env['FUZZ_RUNS'] ?? '5000');

/** Another one each day finds other faults; a fault says its own. */
const SEED = Number(process.env['FUZZ_SEED'] ?? Math.floor(Date.now() / 86_400_000));

test(
  'fuzz: many inputs for every parser',
  async () => {
    const texts = corpus();
    const lines: string[] = [];
    const faulty: string[] = [];
    let total = 0;
    for (const { name, fuzz, tryText } of PARSERS) {
      const begun = performance.now();
      const faults: string[] = [];
      for (const { why, text } of texts)
        faults.push(...(await tryText(text)).map((what) => `${why}: ${what}`));
      const tried = await fuzz(SEED, RUNS).catch((problem: unknown) => {
        faults.push(problem instanceof Error ? problem.message : String(problem));
        return 0;
      });
      total += tried + texts.length;
      const seconds = ((performance.now() - begun) / 1000).toFixed(1);
      lines.push(
        `${name.padEnd(40)} ${String(tried + texts.length).padStart(9)} inputs ${seconds.padStart(7)} s`,
      );
      lines.push(...faults.map((fault) => `  ${fault}`));
      faulty.push(...faults);
    }
    process.stdout.write(
      `${lines.join('\n')}\n${total} inputs for ${PARSERS.length} parsers, seed ${SEED}\n`,
    );
    expect(faulty).toEqual([]);
  },
  24 * 3_600_000,
);
