import type { Edge, MemberName } from '../order/types.ts';
import type { ResolvedRules } from '../rules/resolved.ts';

const MEMBERS: Readonly<Record<Edge, Readonly<Record<'outer' | 'shared', MemberName>>>> = {
  left: { outer: 'stile', shared: 'shared-stile' },
  right: { outer: 'stile', shared: 'shared-stile' },
  top: { outer: 'top-rail', shared: 'mid-rail' },
  bottom: { outer: 'bottom-rail', shared: 'mid-rail' },
};

/** Width in mm of the member at an edge: what the edge's condition says, or else the shop standard. */
export function memberAt(edge: Edge, rules: ResolvedRules): number {
  const { condition, situation } = rules.edges[edge];
  return condition.kind === 'cover' || condition.kind === 'share'
    ? condition.member
    : rules.members[MEMBERS[edge][situation]].value;
}
