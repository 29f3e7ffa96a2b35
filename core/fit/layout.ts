import { groupBy } from '../collections/group-by.ts';
import { cabinetKey } from '../order/cabinets.ts';
import { memberBetween } from './member-at.ts';
import type { DrawerFit, Placed } from './types.ts';

/** A drawer's opening in its cabinet. */
export interface PlacedDrawer {
  readonly fit: DrawerFit;
  readonly opening: Placed;
}

/** The drawers of one cabinet, each opening where it stands. */
export interface CabinetLayout {
  readonly key: string;
  readonly drawers: readonly PlacedDrawer[];
}

/**
 * Places the openings of every cabinet: columns from left to right, drawers downwards from a common top, and
 * between them the members that their edges' conditions name, or else those of the shop standard. Origin at the upper left opening's corner, mm.
 */
export function layOutCabinets(fits: readonly DrawerFit[]): readonly CabinetLayout[] {
  return [...groupBy(fits, (fit) => cabinetKey(fit.drawer))].map(([key, ofCabinet]) => {
    const columns = [...groupBy(ofCabinet, (fit) => fit.drawer.column)].toSorted(([a], [b]) => a - b);
    const drawers: PlacedDrawer[] = [];
    let x = 0;
    for (const [index, [, column]] of columns.entries()) {
      let y = 0;
      for (const [row, fit] of column.entries()) {
        drawers.push({ fit, opening: { x, y, w: fit.drawer.openingW, h: fit.drawer.openingH } });
        const below = column[row + 1];
        if (below !== undefined) y += fit.drawer.openingH + memberBetween(fit, 'bottom', below, 'top');
      }
      const widest = Math.max(...column.map((fit) => fit.drawer.openingW));
      const next = columns[index + 1]?.[1] ?? [];
      const stiles = column.flatMap((fit) => next.map((right) => memberBetween(fit, 'right', right, 'left')));
      x += widest + Math.max(0, ...stiles);
    }
    return { key, drawers };
  });
}

/** A front where it ends up after dialling in, in the coordinates of its cabinet. */
export function placedFront({ fit, opening }: PlacedDrawer): Placed {
  const { left, right, bottom } = fit.rules.edges;
  const extraW = fit.frontW - (opening.w + left.overlay + right.overlay);
  const bottomLine = opening.y + opening.h + bottom.overlay;
  return {
    x: opening.x - left.overlay - extraW / 2,
    y: bottomLine - fit.frontH,
    w: fit.frontW,
    h: fit.frontH,
  };
}
