import { execFileSync } from 'node:child_process';

/** The normal distribution function of Python's `statistics.NormalDist`, a reference that is not ours. */
function normalCdf(values: readonly number[]): readonly number[] {
  const script =
    'import json, sys, statistics as s; n = s.NormalDist(); print(json.dumps([n.cdf(x) for x in json.load(sys.stdin)]))';
  const out = execFileSync('/usr/bin/python3', ['-c', script], {
    input: JSON.stringify(values),
    encoding: 'utf8',
  });
  const parsed: unknown = JSON.parse(out);
  if (!Array.isArray(parsed)) throw new Error(`python answered ${out}`);
  return parsed.map(Number);
}

/** Share of a normal distribution within ± so many standard deviations. */
export const within = (sigmas: number): number => {
  const [below = Number.NaN] = normalCdf([-sigmas]);
  return 1 - 2 * below;
};
