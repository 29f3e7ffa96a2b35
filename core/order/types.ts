import type { LengthUnit } from '../units/unit.ts';

export type { LengthUnit };

/** An edge of a front, named for someone facing the closed cabinet. */
export type Edge = 'left' | 'right' | 'top' | 'bottom';

export const EDGES: readonly Edge[] = ['left', 'right', 'top', 'bottom'];

/** Where a drawer stands in its stack. */
export type Position = 'top' | 'middle' | 'bottom';

/**
 * What an edge of the front meets, as a standard or an order cell states it. Lengths in mm.
 * `member` is a width in mm, or the name of a member whose width the shop standard holds.
 */
export type EdgeCondition =
  /** `inset G`: the front stands in the opening with this gap. Overlay -G. */
  | { readonly kind: 'inset'; readonly gap: number }
  /** `lap O`: plain overlay O. */
  | { readonly kind: 'lap'; readonly overlay: number }
  /** `cover W [reveal R]`: covers a member of width W but for R. Overlay W - R. */
  | { readonly kind: 'cover'; readonly member: number | MemberName; readonly reveal: number }
  /** `share W gap G [neighbor N]`: shares the member with another front. (W - G)/2, or W - G - N. */
  | {
      readonly kind: 'share';
      readonly member: number | MemberName;
      readonly gap: number;
      readonly neighborLap?: number;
    };

/** Members of a cabinet front: what an opening is bounded by. Frameless: the panel edges. */
export type MemberName = 'stile' | 'shared-stile' | 'top-rail' | 'mid-rail' | 'bottom-rail';

export const MEMBER_NAMES: readonly MemberName[] = [
  'stile',
  'shared-stile',
  'top-rail',
  'mid-rail',
  'bottom-rail',
];

/** How a front is made. Lengths in mm. `thinnest`: the wood left where the face is profiled. */
export type FrontConstruction =
  | { readonly kind: 'slab'; readonly thinnest?: number }
  /** Frame of stiles and rails of this width around a panel that is free to move in its groove. */
  | {
      readonly kind: 'five-piece';
      /** Of the stiles, and of the rails unless `railWidth` says otherwise. */
      readonly memberWidth: number;
      readonly railWidth?: number;
      /** `cope`: the stiles run the whole height, the rails stand between them. */
      readonly joint?: 'cope' | 'mitre';
      readonly thinnest?: number;
    };

/** The pull of a row: a sort that the shop standard knows, and what the order says of it. Lengths in mm. */
export interface PullChoice {
  /** As the standard spells it: `bar`. */
  readonly sort: string;
  readonly centers?: number;
  /** How many on one front, where the order says so. */
  readonly count?: 1 | 2;
}

/** One line of an order: a drawer and how many alike. Lengths in mm; absent means "derive it". */
export interface Drawer {
  /** Row of the file it came from, as a spreadsheet counts; 0 when it came from elsewhere. */
  readonly row: number;
  readonly room?: string;
  readonly cabinet: string;
  readonly cabinetKind?: string;
  /** 1 at the cabinet's left. */
  readonly column: number;
  readonly position: Position;
  /** No drawer above (or below) it in its column, by the order of the rows. */
  readonly first: boolean;
  readonly last: boolean;
  readonly drawer: string;
  readonly qty: number;
  /** The style's name as the shop standard spells it. */
  readonly style: string;
  readonly openingW: number;
  readonly openingH: number;
  /** Edge cells that override the style's edge. */
  readonly edges: Readonly<Partial<Record<Edge, EdgeCondition>>>;
  readonly frontW?: number;
  readonly frontH?: number;
  readonly boxW?: number;
  readonly boxH?: number;
  readonly front: FrontConstruction;
  readonly frontThickness?: number;
  readonly boxSide?: number;
  readonly boxFront?: number;
  /** From the back of the front to the back of the box. */
  readonly boxD?: number;
  /** Of the front; a key of the standard's species. */
  readonly species?: string;
  /** The text of the cell; `pullChoice` is what it means, absent when the standard knows no such sort. */
  readonly pull?: string;
  readonly pullChoice?: PullChoice;
  readonly note?: string;
}

export interface Order {
  readonly name: string;
  /** `YYYY-MM-DD`, engraved on the jigs; absent when nobody gave one. */
  readonly date?: string;
  /** Unit of bare numbers and of what people read. */
  readonly unit: LengthUnit;
  readonly drawers: readonly Drawer[];
}
