import type { CabinetLayout, PlacedDrawer } from '../fit/layout.ts';

/** Drawers one above the other, from the top. */
export interface Column {
  readonly x: number;
  /** Width of the widest opening, mm. */
  readonly w: number;
  readonly first: PlacedDrawer;
  readonly last: PlacedDrawer;
  readonly drawers: readonly PlacedDrawer[];
}

/** The columns of a cabinet from its left. */
export function columnsOf(layout: CabinetLayout): readonly Column[] {
  const numbers = new Set(layout.drawers.map(({ fit }) => fit.drawer.column));
  return [...numbers]
    .toSorted((a, b) => a - b)
    .flatMap((number) => {
      const drawers = layout.drawers.filter(({ fit }) => fit.drawer.column === number);
      const [first, last] = [drawers[0], drawers.at(-1)];
      if (first === undefined || last === undefined) return [];
      const w = Math.max(...drawers.map(({ opening }) => opening.w));
      return [{ x: first.opening.x, w, first, last, drawers }];
    });
}
