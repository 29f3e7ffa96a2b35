import type { Sourced, SourcedLength } from './types.ts';

/** A wood as the handbook tables it. */
export interface Species {
  /** Ovendry weight, volume at 12 % moisture content. */
  readonly specificGravity: Sourced<number>;
  readonly softwood: boolean;
  /** Dimensional change per percent of moisture content, quartersawn and flatsawn: C_R and C_T. */
  readonly radial: Sourced<number>;
  readonly tangential: Sourced<number>;
}

/** Which way the growth rings lie in a board's width. */
export type Sawn = 'flatsawn' | 'quartersawn';

/** Indoor air. */
export interface Air {
  /** Percent. */
  readonly humidity: Sourced<number>;
  /** Degrees Celsius. */
  readonly temperature: Sourced<number>;
}

/** What fronts are made of, unless a row of the order says otherwise. */
export interface FrontWood {
  /** A key of the standard's species. */
  readonly species: Sourced<string>;
  /** Sheet goods stay put; solid wood moves across its grain. */
  readonly slab: Sourced<'solid' | 'panel'>;
  /** Which way the grain of a solid slab runs. */
  readonly grain: Sourced<'horizontal' | 'vertical'>;
  readonly sawn: Sourced<Sawn>;
  /** The driest and the dampest air that the fronts live in, and the air that they are fitted in. */
  readonly dry: Air;
  readonly damp: Air;
  readonly shop: Air;
}

/** The groove that holds the panel of a five-piece front. Lengths in mm. */
export interface PanelGroove {
  /** From the inner edge of stile or rail into its width. */
  readonly depth: SourcedLength;
  /** From the back of the front to the groove. */
  readonly behind: SourcedLength;
  /** Through the thickness. */
  readonly width: SourcedLength;
}
