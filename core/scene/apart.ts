import type { Vec3 } from '../jigs/types.ts';
import { solidPoints } from './solid-points.ts';
import type { Solid } from './types.ts';
import { dot, scale } from './vec.ts';

/** mm. Between the sheets of a jig that is drawn apart, and from them to the keys drawn out of them. */
const BETWEEN = 14;

/**
 * The pieces of a jig with their way apart along the stack: the lowest sheet stays, each next one is a step
 * farther up, and the keys or pins come out at the top.
 */
export function piecesApart(solids: readonly Solid[], axis: Vec3): readonly Solid[] {
  const reach = (solid: Solid) => {
    const heights = solidPoints(solid).map((point) => dot(point, axis));
    return { low: Math.min(...heights), high: Math.max(...heights) };
  };
  const isSheet = ({ material }: Solid) => material === 'jig';
  const sheets = solids.filter(isSheet).map(reach);
  const lows = [...new Set(sheets.map(({ low }) => Math.round(low * 1000)))].toSorted((a, b) => a - b);
  const top = Math.max(...sheets.map(({ high }) => high));
  const last = (lows.length - 1) * BETWEEN;
  return solids.map((solid) => {
    const { low } = reach(solid);
    const by = isSheet(solid) ? lows.indexOf(Math.round(low * 1000)) * BETWEEN : last + BETWEEN + top - low;
    return { ...solid, apart: scale(axis, by) };
  });
}
