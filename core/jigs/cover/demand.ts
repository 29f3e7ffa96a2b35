import { groupBy } from '../../collections/group-by.ts';
import { nanometres } from './nanometres.ts';
import type { Range } from './types.ts';

/** The overhangs that serve along one axis and the best of them, whole nanometres. */
export interface Span {
  readonly lo: number;
  readonly hi: number;
  /** Always within the span: what lies between it and the overhang wanted is adjusted by any jig. */
  readonly best: number;
}

/** Overhangs of a setting, whole nanometres: one for each axis of the demands. */
export type Site = readonly number[];

/** What needs of the same ranges ask for. An edge has one span, a corner two. */
export interface Demand {
  readonly spans: readonly Span[];
  readonly weight: number;
  /** Whether a jig of two settings cannot serve it. */
  readonly alone: boolean;
  /** Indexes of the needs, in their order. */
  readonly needs: readonly number[];
}

export interface Ranges {
  readonly id: string;
  readonly weight: number;
  readonly ranges: readonly Range[];
  readonly alone?: boolean;
}

/** Checks needs and puts those of the same ranges together. */
export function demandsOf(needs: readonly Ranges[]): readonly Demand[] {
  const seen = new Set<string>();
  for (const need of needs) {
    check(need);
    if (seen.has(need.id)) throw new RangeError(`two needs are called ${need.id}; each id must be its own`);
    seen.add(need.id);
  }
  const scales = (needs[0]?.ranges ?? []).map((_, axis) =>
    nanometres(
      needs.flatMap(({ ranges }) => {
        const range = ranges[axis];
        return range === undefined ? [] : [...range.interval, range.wanted];
      }),
    ),
  );
  const all = needs.map(({ ranges, weight, alone = false }, index) => ({
    spans: ranges.map(({ interval, wanted }, axis) => {
      const [lo, hi, best] = [...interval, wanted].map((mm) => scales[axis]?.(mm) ?? Number.NaN);
      return spanOf(lo ?? Number.NaN, hi ?? Number.NaN, best ?? Number.NaN);
    }),
    weight,
    alone,
    index,
  }));
  const groups = groupBy(all, ({ spans, alone }) => JSON.stringify([spans, alone]));
  return [...groups.values()].map((group) => ({
    spans: group[0]?.spans ?? [],
    alone: group[0]?.alone ?? false,
    weight: group.reduce((sum, { weight }) => sum + weight, 0),
    needs: group.map(({ index }) => index),
  }));
}

const spanOf = (lo: number, hi: number, wanted: number): Span => ({
  lo,
  hi,
  best: Math.min(Math.max(wanted, lo), hi),
});

function check({ id, weight, ranges }: Ranges): void {
  if (!(weight > 0 && weight < Infinity)) {
    throw new RangeError(`need ${id}: the weight ${weight} must be a number of drawers above 0`);
  }
  for (const { interval, wanted } of ranges) {
    const [lo, hi] = interval;
    if (![lo, hi, wanted].every(Number.isFinite) || lo > hi) {
      throw new RangeError(
        `need ${id}: the interval ${lo} to ${hi} mm with ${wanted} mm wanted must be finite and not reversed`,
      );
    }
  }
}

export const serves = (site: Site, { spans }: Demand): boolean =>
  spans.every(({ lo, hi }, axis) => {
    const overhang = site[axis] ?? Number.NaN;
    return lo <= overhang && overhang <= hi;
  });

/** nm, for each drawer. */
export const adjustmentAt = (site: Site, { spans }: Demand): number =>
  spans.reduce((sum, { best }, axis) => sum + Math.abs((site[axis] ?? Number.NaN) - best), 0);
