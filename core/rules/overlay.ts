import type { EdgeCondition, MemberName } from '../order/types.ts';

/** An edge condition whose member is a width in mm. */
export type ResolvedCondition =
  | Extract<EdgeCondition, { kind: 'inset' | 'lap' }>
  | (Extract<EdgeCondition, { kind: 'cover' }> & { readonly member: number })
  | (Extract<EdgeCondition, { kind: 'share' }> & { readonly member: number });

/** Puts the width in mm of a member in the place of its name. */
export function resolveCondition(
  condition: EdgeCondition,
  widths: Readonly<Record<MemberName, { readonly value: number }>>,
): ResolvedCondition {
  if (condition.kind === 'inset' || condition.kind === 'lap') return condition;
  const { member } = condition;
  return { ...condition, member: typeof member === 'number' ? member : widths[member].value };
}

/**
 * How far a front laps over its opening at an edge, in mm; negative when it stands inside.
 *
 * | edge condition | overlay |
 * | --- | --- |
 * | inset, gap g | -g |
 * | plain overlay o | o |
 * | covers its member of width w, reveal r | w - r |
 * | shares a member of width w, gap g | (w - g) / 2 |
 * | shares a member, the neighbour laps it by n | w - g - n |
 *
 * Arithmetic of the design, no source.
 */
export function overlayOf(condition: ResolvedCondition): number {
  switch (condition.kind) {
    case 'inset':
      return condition.gap === 0 ? 0 : -condition.gap;
    case 'lap':
      return condition.overlay;
    case 'cover':
      return condition.member - condition.reveal;
    default: {
      const { member, gap, neighborLap } = condition;
      return neighborLap === undefined ? (member - gap) / 2 : member - gap - neighborLap;
    }
  }
}
