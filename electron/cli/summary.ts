import { counted } from './print-findings.ts';
import type { OrderResult } from './order-result.ts';

const COUNTS = ['drawers', 'jigs', 'parts', 'warnings'] as const;

/** One order on one line. */
export function resultLine(result: OrderResult): string {
  const { state, place, drawers, jigs, parts, errors, warnings, reason, seconds } = result;
  const time = `${seconds.toFixed(2)} s`;
  if (state === 'unchanged') return `unchanged  ${place}`;
  if (state === 'failed') {
    return `FAILED     ${result.order}: ${reason ?? `${counted(errors, 'error')}, told above`}; nothing was written to ${place}`;
  }
  return `made       ${place}: ${counted(drawers, 'drawer')}, ${counted(jigs, 'jig')}, ${counted(parts, 'part')}, ${counted(warnings, 'warning')}, ${time}`;
}

const withState = (results: readonly OrderResult[], state: OrderResult['state']): readonly OrderResult[] =>
  results.filter((result) => result.state === state);

/** Sums over the orders that were made; of unchanged ones nothing was worked out. */
function totals(results: readonly OrderResult[]): Readonly<Record<(typeof COUNTS)[number], number>> {
  const made = withState(results, 'made');
  const sum = (count: (typeof COUNTS)[number]) => made.reduce((total, result) => total + result[count], 0);
  return { drawers: sum('drawers'), jigs: sum('jigs'), parts: sum('parts'), warnings: sum('warnings') };
}

/** The end of a call that made several orders. */
export function summaryText(results: readonly OrderResult[], seconds: number): string {
  const { drawers, jigs, parts, warnings } = totals(results);
  const failed = withState(results, 'failed');
  const unchanged = withState(results, 'unchanged').length;
  return [
    `${counted(results.length, 'order')}: ${withState(results, 'made').length} made, ${unchanged} unchanged, ${failed.length} failed, in ${seconds.toFixed(1)} s`,
    `made: ${counted(drawers, 'drawer')}, ${counted(jigs, 'jig')}, ${counted(parts, 'part')}, ${counted(warnings, 'warning')}`,
    ...(unchanged === 0 ? [] : ['unchanged orders are not looked through again; --again makes all']),
    ...(failed.length === 0 ? [] : ['failed:', ...failed.map(({ order }) => `  ${order}`)]),
    '',
  ].join('\n');
}

/** The same for programs; its fields are told by `overhang make --help`. */
export function summaryJson(results: readonly OrderResult[], seconds: number): string {
  const rounded = (value: number) => Math.round(value * 1000) / 1000;
  const document = {
    format: 'overhang-summary',
    version: 1,
    made: withState(results, 'made').length,
    unchanged: withState(results, 'unchanged').length,
    failed: withState(results, 'failed').length,
    ...totals(results),
    seconds: rounded(seconds),
    orders: results.map((result) => ({ ...result, seconds: rounded(result.seconds) })),
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}
