import type { SampledShare } from '../fit/budget/share-interval.ts';
import type { OrderRework } from './order-rework.ts';

/** `Of 51 fronts, 0.1 are expected to need rework (0.0 to 0.4).` The interval is rounded outwards. */
export function reworkWords({ fronts, expected, low, high }: OrderRework['rework']): string {
  return `Of ${fronts} fronts, ${expected.toFixed(1)} are expected to need rework (${down(low)} to ${up(high)}).`;
}

/** `99.8 % of fronts like this one come in (99.4 to 100.0 %).` */
export function reachShareWords({ share, low, high }: SampledShare): string {
  return `${(100 * share).toFixed(1)} % of fronts like this one come in (${down(100 * low)} to ${up(100 * high)} %).`;
}

/** Added before rounding outwards, so that float noise moves no bound. */
const NOISE = 1e-9;

const down = (value: number): string => (Math.floor(10 * value + NOISE) / 10).toFixed(1);
const up = (value: number): string => (Math.ceil(10 * value - NOISE) / 10).toFixed(1);
