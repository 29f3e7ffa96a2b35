import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { bundleCli } from './bundle.ts';
import { temporaryFolder } from './temporary.ts';

/** Numbers of orders; `ORDERS=20,60` for a slow machine. */
const NUMBERS = (process.env['ORDERS'] ?? '100,1000').split(',').map(Number);

/** Options of `overhang make` besides, such as `OPTIONS='--paper none'`. */
const OPTIONS = (process.env['OPTIONS'] ?? '').split(' ').filter((word) => word !== '');

const folder = temporaryFolder();

/** Three drawers, others for each seed. */
function orderOf(seed: number): string {
  let state = seed;
  // Linear congruential; the constants are those of Numerical Recipes, from memory.
  const upTo = (end: number): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((end * state) / 2 ** 32);
  };
  const rows = [1, 2, 3].map(
    (index) =>
      `B${index},only,${1 + upTo(3)},full overlay,${12 + upTo(18)},${5 + upTo(5)} ${1 + upTo(15)}/16`,
  );
  return ['cabinet,drawer,qty,style,opening_w,opening_h', ...rows, ''].join('\n');
}

const summarySchema = z.object({
  made: z.number(),
  failed: z.number(),
  unchanged: z.number(),
  seconds: z.number(),
});

const usageSchema = z.object({ maxRSS: z.number(), userCPUTime: z.number(), systemCPUTime: z.number() });

test('thousand: time for each order, growth, peak memory', async () => {
  const main = await bundleCli(folder);
  const lines: string[] = [];
  /** Threads share their process, so this is of all of them: peak memory in kB (Linux), CPU time in μs. */
  const usage = join(folder, 'usage.json');
  const note = `import{writeFileSync}from'node:fs';import{isMainThread}from'node:worker_threads';if(isMainThread)process.on('exit',()=>writeFileSync(${JSON.stringify(usage)},JSON.stringify(process.resourceUsage())))`;
  const each: number[] = [];
  for (const number of NUMBERS) {
    const place = join(folder, `orders-${number}`);
    mkdirSync(place);
    const orders = Array.from({ length: number }, (_, index) => join(place, `order-${index + 1}.csv`));
    for (const [index, order] of orders.entries()) writeFileSync(order, orderOf(index + 1));
    const out = join(folder, `out-${number}`);
    const summary = join(folder, 'summary.json');
    for (const what of ['made', 'unchanged'] as const) {
      const child = spawnSync(
        process.execPath,
        [
          '--import',
          `data:text/javascript,${encodeURIComponent(note)}`,
          main,
          'make',
          ...orders,
          '--out',
          out,
          '--summary',
          summary,
          ...OPTIONS,
        ],
        { encoding: 'utf8', maxBuffer: 1 << 28 },
      );
      const found = summarySchema.parse(JSON.parse(readFileSync(summary, 'utf8')));
      expect({ status: child.status, failed: found.failed, [what]: found[what] }).toEqual({
        status: 0,
        failed: 0,
        [what]: number,
      });
      const ms = (1000 * found.seconds) / number;
      const used = usageSchema.parse(JSON.parse(readFileSync(usage, 'utf8')));
      const cpu = (used.userCPUTime + used.systemCPUTime) / 1000 / number;
      if (what === 'made') each.push(cpu);
      lines.push(
        `${String(number).padStart(6)} orders ${what.padEnd(9)}: ${ms.toFixed(1)} ms each (${cpu.toFixed(1)} ms of CPU), ${found.seconds.toFixed(1)} s, peak memory ${(used.maxRSS / 1024).toFixed(0)} MiB`,
      );
    }
  }
  const growth = (each.at(-1) ?? Number.NaN) / (each[0] ?? Number.NaN);
  lines.push(
    `an order of ${NUMBERS.at(-1)} takes ${growth.toFixed(2)} times the CPU time of one of ${NUMBERS[0]}; ${availableParallelism()} threads`,
  );
  process.stdout.write(`${lines.join('\n')}\n`);
}, 3_600_000);
