import type { Point } from '../geometry/types.ts';
import type { DrawerFit, Placed } from '../fit/types.ts';
import type { Edge, MemberName } from '../order/types.ts';

/** A fit and the row of the order that it belongs to. */
export interface RowFit {
  readonly rowId: string;
  readonly fit: DrawerFit;
}

/** The worst that was found about a row. */
export type RowState = 'right' | 'warning' | 'error';

/** A stile, rail or panel edge of the cabinet's front. */
export interface ElevationMember extends Placed {
  readonly name: MemberName;
  /** As a shop calls it: `top rail`; of a frameless cabinet `top panel`. */
  readonly word: string;
}

/** One drawer: its opening, its front after dialling in, and the box behind the front. Lengths in mm. */
export interface ElevationDrawer {
  readonly rowId: string;
  /** The drawer's own name, without its cabinet. */
  readonly name: string;
  /** How many cabinets alike the row stands for. */
  readonly qty: number;
  readonly state: RowState;
  readonly opening: Placed;
  readonly front: Placed;
  readonly box: Placed;
  /** Stiles and rails of a five-piece front, and the panel between them; none for a slab. */
  readonly pieces: readonly Placed[];
}

/**
 * What a dimension measures: the gap between two fronts; the gap of an inset front to its frame; the reveal
 * of the cabinet's outer member; the gap to a front that is not drawn, a door below for one.
 */
export type GapKind = 'between' | 'frame' | 'reveal' | 'unseen';

export interface GapDimension {
  readonly kind: GapKind;
  /** The edge of the first row's front at which it is. */
  readonly edge: Edge;
  /** mm; negative where fronts overlap, or a front stands past its cabinet. */
  readonly mm: number;
  /** The way it is measured, and its two ends on the dimension line. */
  readonly axis: 'x' | 'y';
  readonly from: Point;
  readonly to: Point;
  /** Where there is room for its figure, seen from the dimension line. */
  readonly figure: 'left' | 'right' | 'above' | 'below';
  /** The rows whose fronts it is about, one or two. */
  readonly rowIds: readonly string[];
}

/** A closed cabinet seen by someone facing it: x to the right, y down, mm. */
export interface Elevation {
  readonly key: string;
  /** `Reading room / R2` */
  readonly name: string;
  /** The cabinet's front from outside to outside. */
  readonly outside: Placed;
  readonly members: readonly ElevationMember[];
  readonly drawers: readonly ElevationDrawer[];
  readonly dimensions: readonly GapDimension[];
}
