import type { Draft } from '../../core/project/draft.ts';
import { runChain, totalOf } from './chain.ts';

/**
 * Lines on how the chain's time and memory grow with the order. Memory is what the process has at most had in use;
 * it never falls, so the largest order comes last.
 */
export async function* growth(
  title: string,
  draftOf: (drawers: number) => Draft,
  counts: readonly number[],
): AsyncGenerator<string> {
  yield `${title}: drawers, jigs, parts; ms a drawer; times as long as the line above; MiB at most`;
  let before: number | undefined;
  for (const count of counts) {
    const { times, jigs, parts } = await runChain(draftOf(count));
    const total = totalOf(times);
    const most = process.resourceUsage().maxRSS / 1024;
    const ratio = before === undefined ? '' : `${(total / before).toFixed(1)} x`;
    yield `${String(count).padStart(7)} ${String(jigs).padStart(5)} ${String(parts).padStart(5)} ${(total / count).toFixed(2).padStart(9)} ${ratio.padStart(8)} ${most.toFixed(0).padStart(6)}`;
    before = total;
  }
}

/** Lines on which stage takes what share of the whole; writing the bytes is the floor that nothing goes under. */
export async function* shares(title: string, draft: Draft): AsyncGenerator<string> {
  const { times, files, bytes } = await runChain(draft);
  const total = totalOf(times);
  yield `${title}: share of each stage in ${(total / 1000).toFixed(1)} s; ${files} files, ${(bytes / 2 ** 20).toFixed(1)} MiB`;
  for (const [stage, ms] of times) {
    yield `  ${stage.padEnd(14)}${((100 * ms) / total).toFixed(1).padStart(5)} %`;
  }
}
