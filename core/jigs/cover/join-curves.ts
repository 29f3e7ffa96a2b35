import { lessToAdjust, NOTHING, type Cover } from './cover.ts';

/**
 * The covers of a whole from those of its parts: for each number of jigs up to `most` the best way to share
 * them out. A part's covers come with ever more jigs and ever less adjustment, and so do those of the whole.
 */
export function joinCurves(parts: readonly (readonly Cover[])[], most = Infinity): readonly Cover[] {
  let joined: readonly Cover[] = [NOTHING];
  for (const [index, part] of parts.entries()) {
    const toCome = parts.slice(index + 1).reduce((sum, [first]) => sum + (first?.jigs.length ?? 0), 0);
    const best = new Map<number, { total: number; largest: number; pair: readonly [Cover, Cover] }>();
    for (const before of joined) {
      for (const own of part) {
        const jigs = before.jigs.length + own.jigs.length;
        // The fewest always stay, even when they are more than asked for.
        const isFewest = before === joined[0] && own === part[0];
        if (jigs + toCome > most && !isFewest) continue;
        const sum = {
          total: before.total + own.total,
          largest: Math.max(before.largest, own.largest),
          pair: [before, own] as const,
        };
        const known = best.get(jigs);
        if (known === undefined || lessToAdjust(sum, known)) best.set(jigs, sum);
      }
    }
    joined = ever(
      [...best.values()].map(({ total, largest, pair: [a, b] }) => ({
        jigs: [...a.jigs, ...b.jigs],
        total,
        largest,
      })),
    );
  }
  return joined;
}

/** Sorted by number of jigs, without those that adjust no less than one with fewer. */
export function ever(covers: readonly Cover[]): readonly Cover[] {
  const kept: Cover[] = [];
  for (const cover of covers.toSorted((a, b) => a.jigs.length - b.jigs.length || a.total - b.total)) {
    if (cover.total < (kept.at(-1)?.total ?? Infinity)) kept.push(cover);
  }
  return kept;
}

/**
 * The bounds of a whole from those of its parts, each a list that starts with the fewest jigs and goes on with
 * one jig more at a time; past its end, nothing is left to adjust or nothing is known, so 0.
 */
export function joinBounds(parts: readonly (readonly number[])[], extra: number): readonly number[] {
  let joined: readonly number[] = Array.from({ length: extra + 1 }, () => 0);
  for (const part of parts) {
    joined = joined.map((_, jigs) =>
      Math.min(...joined.slice(0, jigs + 1).map((bound, others) => bound + (part[jigs - others] ?? 0))),
    );
  }
  return joined;
}
