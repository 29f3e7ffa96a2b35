import type { Finding } from '../findings/finding.ts';
import type { Edge } from '../order/types.ts';
import { formatLength } from '../units/format-length.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { groupBy } from '../collections/group-by.ts';
import type { CabinetLayout } from './layout.ts';
import { statedMember } from './member-at.ts';
import { drawerName } from './drawer-name.ts';
import { fitWarning } from './fit-finding.ts';
import type { DrawerFit } from './types.ts';

/**
 * What does not go together in the columns of a cabinet: openings of different widths one above the other,
 * and two edges that name different widths for the member between them.
 */
export function checkStack({ drawers }: CabinetLayout): readonly Finding[] {
  const columns = groupBy(
    drawers.map(({ fit }) => fit),
    ({ drawer }) => drawer.column,
  );
  return [...columns.values()].flatMap((column) =>
    column.slice(1).flatMap((lower, index) => {
      const upper = column[index];
      return upper === undefined
        ? []
        : [...checkWidths(upper, lower), ...checkMember(upper, 'bottom', lower, 'top')];
    }),
  );
}

function checkWidths(upper: DrawerFit, lower: DrawerFit): readonly Finding[] {
  const [above, own] = [upper.drawer.openingW, lower.drawer.openingW];
  if (Math.abs(above - own) <= SAME_LENGTH) return [];
  const text = (mm: number) => formatLength(mm, lower.unit);
  return [
    fitWarning(
      'column-width',
      `its opening is ${text(own)} wide, that of ${drawerName(upper.drawer)} above it ${text(above)}; where a wide drawer stands under two columns, say what its edges and those above it meet in their edge and position cells`,
      { drawer: lower.drawer, column: 'opening_w', values: { own, above } },
    ),
  ];
}

function checkMember(a: DrawerFit, edgeOfA: Edge, b: DrawerFit, edgeOfB: Edge): readonly Finding[] {
  const [one, other] = [statedMember(edgeOfA, a.rules), statedMember(edgeOfB, b.rules)];
  if (one === undefined || other === undefined || Math.abs(one - other) <= SAME_LENGTH) return [];
  const text = (mm: number) => formatLength(mm, b.unit);
  return [
    fitWarning(
      'member-differs',
      `its ${edgeOfB} edge meets a member of ${text(other)}, the ${edgeOfA} edge of ${drawerName(a.drawer)} calls the same member ${text(one)}`,
      { drawer: b.drawer, column: edgeOfB, values: { one, other } },
    ),
  ];
}
