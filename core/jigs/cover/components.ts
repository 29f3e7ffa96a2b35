import type { Demand } from './demand.ts';
import { linked } from './linked.ts';

/**
 * Demands that no jig can serve together, not even by way of others, are apart: each part can be solved by
 * itself, and the answers added up.
 */
export const components = (demands: readonly Demand[]): readonly (readonly Demand[])[] =>
  linked(demands, meet);

/** Whether one jig can serve both. */
const meet = (a: Demand, b: Demand): boolean =>
  a.spans.every((span, axis) => {
    const other = b.spans[axis];
    return other !== undefined && span.lo <= other.hi && other.lo <= span.hi;
  });
