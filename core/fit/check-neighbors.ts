import type { Finding } from '../findings/finding.ts';
import type { Edge } from '../order/types.ts';
import { formatLength } from '../units/format-length.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { placedFront, type CabinetLayout, type PlacedDrawer } from './layout.ts';
import { drawerName } from './drawer-name.ts';
import { fitError, fitWarning } from './fit-finding.ts';
import type { Placed } from './types.ts';

/**
 * Whether any two fronts of a cabinet collide across the member that they share, or come nearer to each
 * other than the smallest gap (mm).
 */
export function checkNeighbors(cabinet: CabinetLayout, smallestGap: number): readonly Finding[] {
  const placed = cabinet.drawers.map((drawer) => ({ drawer, front: placedFront(drawer) }));
  return placed.flatMap((a, i) =>
    placed.slice(i + 1).flatMap((b) => {
      const between = gapBetween(a.front, b.front);
      return between !== null && between.gap < smallestGap - SAME_LENGTH
        ? [report(a.drawer, b.drawer, between, smallestGap)]
        : [];
    }),
  );
}

interface Between {
  readonly gap: number;
  /** The edge of the first front at which the second one is. */
  readonly edge: Edge;
}

/** The gap between two fronts that face each other, or null when they stand diagonally. */
function gapBetween(a: Placed, b: Placed): Between | null {
  const acrossX = Math.max(b.x - (a.x + a.w), a.x - (b.x + b.w));
  const acrossY = Math.max(b.y - (a.y + a.h), a.y - (b.y + b.h));
  const apartX = acrossX > -SAME_LENGTH;
  const apartY = acrossY > -SAME_LENGTH;
  if (apartX && apartY) return null;
  return acrossX > acrossY
    ? { gap: acrossX, edge: b.x > a.x ? 'right' : 'left' }
    : { gap: acrossY, edge: b.y > a.y ? 'bottom' : 'top' };
}

function report(a: PlacedDrawer, b: PlacedDrawer, { gap, edge }: Between, smallest: number): Finding {
  const mm = (value: number) => formatLength(value, a.fit.unit);
  const other = drawerName(b.fit.drawer);
  const about = { drawer: a.fit.drawer, column: edge };
  return gap < -SAME_LENGTH
    ? fitError(
        'collision',
        `the front overlaps that of ${other} by ${mm(-gap)} across the member at its ${edge} edge`,
        { ...about, values: { edge, gap, other } },
      )
    : fitWarning(
        'gap-small',
        `the gap to the front of ${other} is ${mm(gap)}; the shop standard's smallest is ${mm(smallest)}`,
        { ...about, values: { edge, gap, smallest, other } },
      );
}
