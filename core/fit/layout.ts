import { groupBy } from '../collections/group-by.ts';
import type { DrawerFit, Placed } from './types.ts';
import { cabinetKey } from '../order/cabinets.ts';

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
 * Places the openings of every cabinet: columns from left to right, a shared stile between them, drawers
 * downwards from a common top with a mid rail between them. Origin at the upper left opening's corner, mm.
 */
export function layOutCabinets(fits: readonly DrawerFit[]): readonly CabinetLayout[] {
  return [...groupBy(fits, (fit) => cabinetKey(fit.drawer))].map(([key, ofCabinet]) => {
    const columns = [...groupBy(ofCabinet, (fit) => fit.drawer.column)].toSorted(([a], [b]) => a - b);
    const drawers: PlacedDrawer[] = [];
    let x = 0;
    for (const [, column] of columns) {
      let y = 0;
      for (const fit of column) {
        drawers.push({ fit, opening: { x, y, w: fit.drawer.openingW, h: fit.drawer.openingH } });
        y += fit.drawer.openingH + fit.rules.members['mid-rail'].value;
      }
      const widest = Math.max(...column.map((fit) => fit.drawer.openingW));
      x += widest + (column[0]?.rules.members['shared-stile'].value ?? 0);
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
