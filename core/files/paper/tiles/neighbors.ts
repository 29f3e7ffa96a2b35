import type { Tile, Tiling } from './tile.ts';

export const SIDES = ['left', 'right', 'above', 'below'] as const;

export type Side = (typeof SIDES)[number];

/** The tiles next to a tile; those that are left out are not among them. */
export function neighborsOf({ column, row }: Tile, { tiles }: Tiling): Readonly<Partial<Record<Side, Tile>>> {
  const at = (columns: number, rows: number) =>
    tiles.find((tile) => tile.column === column + columns && tile.row === row + rows);
  const found = { left: at(-1, 0), right: at(1, 0), above: at(0, -1), below: at(0, 1) };
  return {
    ...(found.left === undefined ? {} : { left: found.left }),
    ...(found.right === undefined ? {} : { right: found.right }),
    ...(found.above === undefined ? {} : { above: found.above }),
    ...(found.below === undefined ? {} : { below: found.below }),
  };
}
