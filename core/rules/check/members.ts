import type { Finding } from '../../findings/finding.ts';
import { MEMBER_NAMES, type MemberName } from '../../order/types.ts';
import type { ShopStandard, SourcedLength } from '../types.ts';
import type { Fault } from './fault.ts';

/** Between frameless fronts there may be a joint without a rail or panel. */
const MAY_BE_ZERO: ReadonlySet<MemberName> = new Set(['shared-stile', 'mid-rail']);

/** Members that are always there have a width. */
export function checkMembers(standard: ShopStandard, fault: Fault): readonly Finding[] {
  const kinds = Object.entries(standard.cabinetKinds).map(
    ([kind, { members }]) => [`cabinetKinds.${kind}.members`, members] as const,
  );
  return [['members', standard.members] as const, ...kinds].flatMap(([field, members]) =>
    MEMBER_NAMES.flatMap((name) => {
      const member: SourcedLength | undefined = members[name];
      if (member === undefined || member.value > 0) return [];
      if (standard.construction === 'frameless' && MAY_BE_ZERO.has(name)) return [];
      const what = 'the width is 0; only the shared-stile and mid-rail of a frameless standard may be 0';
      return [fault('member-zero', `${field}.${name}`, what)];
    }),
  );
}
