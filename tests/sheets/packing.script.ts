import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import {
  packRectangles,
  type PackedRectangles,
  type RectangleItem,
} from '../../core/sheets/pack-rectangles.ts';
import { JIG_SETS } from './jig-like.ts';

/**
 * NEST-1 and NEST-2 by the clock, with tables: `npx vitest run --config vitest.scripts.config.ts packing`.
 *
 * The 500 instances of Berkey and Wang 1987 (classes 1 to 6) and Martello and Vigo 1998 (7 to 10), turns allowed, and
 * the best known numbers of bins, as collected by fontanf/packingsolver (MIT licence). They lie beside the project and
 * are read from there, not copied.
 */
const DATA = resolve(import.meta.dirname, '../../../shared/data/rectangle-bin-packing');

interface Instance {
  readonly name: string;
  readonly items: readonly RectangleItem[];
  readonly width: number;
  readonly height: number;
  readonly best: number;
}

const rowsOf = (file: string): readonly (readonly string[])[] =>
  readFileSync(join(DATA, file), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.trim().split(','));

function readInstance(name: string, best: number): Instance {
  const items = rowsOf(`${name}_items.csv`).flatMap(([, width, height, copies]) =>
    Array.from({ length: Number(copies ?? 1) }, () => ({
      width: Number(width),
      height: Number(height),
      mayTurn: true,
    })),
  );
  const [[, width, height] = []] = rowsOf(`${name}_bins.csv`);
  return { name, items, width: Number(width), height: Number(height), best };
}

/** Packs within a time in ms; without a search the best first packing, which must come in time by itself. */
function timed(
  items: readonly RectangleItem[],
  size: { readonly width: number; readonly height: number },
  limit: number,
  search: boolean,
  room: { readonly edgeMargin: number; readonly spacing: number },
): { readonly packed: PackedRectangles; readonly took: number } {
  const start = performance.now();
  const packed = packRectangles(items, [{ ...size, count: null, offcut: false }], {
    ...room,
    seed: 1,
    effort: search ? Infinity : 0,
    stop: () => limit > 0 && performance.now() - start >= limit,
  });
  return { packed, took: performance.now() - start };
}

test.for([
  { limit: 10, search: false, most: 7100 },
  { limit: 300, search: true, most: 7040 },
])('NEST-1: 500 published instances in $most bins or fewer, $limit ms each', ({ limit, search, most }) => {
  const instances = rowsOf('best-known-rotation.csv').map(([name = '', best]) =>
    readInstance(name, Number(best)),
  );
  expect(instances).toHaveLength(500);
  // The first few would measure the compiler.
  for (const { items, width, height } of instances.slice(0, 50)) {
    timed(items, { width, height }, 10, false, { edgeMargin: 0, spacing: 0 });
  }
  const classes = new Map<string, { bins: number; best: number }>();
  const times: number[] = [];
  for (const { name, items, width, height, best } of instances) {
    const { packed, took } = timed(items, { width, height }, limit, search, { edgeMargin: 0, spacing: 0 });
    expect(packed.left).toEqual([]);
    const key = /Class_\d+/.exec(name)?.[0] ?? name;
    const sum = classes.get(key) ?? { bins: 0, best: 0 };
    classes.set(key, { bins: sum.bins + packed.sheets.length, best: sum.best + best });
    times.push(took);
  }
  const total = [...classes.values()].reduce((sum, { bins }) => sum + bins, 0);
  const known = [...classes.values()].reduce((sum, { best }) => sum + best, 0);
  console.table(Object.fromEntries(classes));
  console.log(
    `${total} bins, best known ${known}; mean ${(times.reduce((a, b) => a + b) / times.length).toFixed(1)} ms, median ${(times.toSorted((a, b) => a - b)[250] ?? 0).toFixed(1)} ms, longest ${Math.max(...times).toFixed(1)} ms, ${times.filter((took) => took > limit).length} over ${limit} ms`,
  );
  expect(known).toBe(6976);
  expect(total).toBeLessThanOrEqual(most);
});

test.for([
  { limit: 0, most: 7.6 },
  { limit: 1000, most: 7.5 },
])(
  'NEST-2: 12 sets of 100 jig-like rectangles, $most sheets or fewer on average, $limit ms',
  ({ limit, most }) => {
    const results = JIG_SETS.map((items) => {
      const { packed, took } = timed(items, { width: 600, height: 400 }, limit, limit > 0, {
        edgeMargin: 10,
        spacing: 6,
      });
      const area = items.reduce((sum, { width, height }) => sum + width * height, 0);
      const { offcut } = packed.sheets.at(-1) ?? { offcut: null };
      return {
        sheets: packed.sheets.length,
        atLeast: packed.atLeast,
        use: Number((area / (packed.sheets.length * 600 * 400)).toFixed(3)),
        offcut: offcut === null ? '' : `${offcut.width.toFixed(0)} x ${offcut.height.toFixed(0)}`,
        ms: Math.round(took),
      };
    });
    console.table(results);
    const mean = (key: 'sheets' | 'atLeast' | 'use'): number =>
      results.reduce((sum, result) => sum + result[key], 0) / results.length;
    console.log(
      `${mean('sheets').toFixed(2)} sheets, ${mean('atLeast').toFixed(2)} at least by area, use ${mean('use').toFixed(3)}`,
    );
    expect(mean('sheets')).toBeLessThanOrEqual(most);
  },
);
