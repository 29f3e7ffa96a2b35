import type { Rect } from './rect.ts';

/** A thing to place, in steps and with the spacing to its right and above it counted in. */
export interface Item {
  readonly index: number;
  readonly width: number;
  readonly height: number;
  readonly mayTurn: boolean;
  /** What it takes of its box, where that is less than the box; the rest stays free for others. */
  readonly cover: readonly Rect[] | null;
  /** What it takes, in steps². */
  readonly area: number;
}

/** A kind of sheet, in steps: what may be covered, the margin off and one spacing added to each side. */
export interface Bin {
  readonly index: number;
  readonly width: number;
  readonly height: number;
  /** How many there are; Infinity: as many as wanted. */
  readonly count: number;
  /** Left over from other work: used before whole sheets are. */
  readonly offcut: boolean;
}

/** Where an item's lower left corner lies, and whether it is turned by a quarter. */
export interface Spot {
  readonly item: Item;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** A sheet with what lies on it. */
export interface Filled {
  readonly bin: Bin;
  readonly spots: readonly Spot[];
  readonly free: readonly Rect[];
  /** Area taken, in steps². */
  readonly used: number;
}

export interface Packing {
  readonly filled: readonly Filled[];
  readonly left: readonly Item[];
}
