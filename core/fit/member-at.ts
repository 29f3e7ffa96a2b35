import type { Edge, MemberName } from '../order/types.ts';
import type { ResolvedRules } from '../rules/resolved.ts';
import type { DrawerFit } from './types.ts';

const MEMBERS: Readonly<Record<Edge, Readonly<Record<'outer' | 'shared', MemberName>>>> = {
  left: { outer: 'stile', shared: 'shared-stile' },
  right: { outer: 'stile', shared: 'shared-stile' },
  top: { outer: 'top-rail', shared: 'mid-rail' },
  bottom: { outer: 'bottom-rail', shared: 'mid-rail' },
};

/** Width in mm that an edge's condition names for its member, if it does. */
export function statedMember(edge: Edge, rules: ResolvedRules): number | undefined {
  const { condition } = rules.edges[edge];
  return condition.kind === 'cover' || condition.kind === 'share' ? condition.member : undefined;
}

/** Width in mm of the member at an edge: what the edge's condition says, or else the shop standard. */
export const memberAt = (edge: Edge, rules: ResolvedRules): number =>
  statedMember(edge, rules) ?? rules.members[MEMBERS[edge][rules.edges[edge].situation]].value;

/** Width in mm of the member between two drawers: what either edge's condition names, or the standard. */
export const memberBetween = (a: DrawerFit, edgeOfA: Edge, b: DrawerFit, edgeOfB: Edge): number =>
  statedMember(edgeOfA, a.rules) ?? statedMember(edgeOfB, b.rules) ?? memberAt(edgeOfA, a.rules);
