import type { Corner, Fastening } from '../../../fastening/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import type { Edge } from '../../../order/types.ts';
import type { PaperDrawing } from '../page/types.ts';

/** A jig on a drawer, and the edges that it is used at there. */
export interface SetupJig {
  readonly id: string;
  readonly edges: readonly Edge[];
}

/** A drill guide and the corners of the box that it is for, or a template for the pull, which has none. */
export interface SetupAid {
  readonly id: string;
  readonly corners: readonly Corner[];
}

/** Drawers that are set up in the same way: with the same jigs, overhangs and screws. */
export interface PaperSetup {
  readonly number: number;
  readonly jigs: readonly SetupJig[];
  readonly aids: readonly SetupAid[];
  readonly members: readonly SetupMember[];
}

export interface SetupMember {
  readonly fit: DrawerFit;
  readonly fastening: Fastening | null;
  /** Id of its paper template; null where none is printed. */
  readonly template: string | null;
}

/** A picture of a jig in its seat on a drawer; null where there is none. */
export type SeatPicture = (fit: DrawerFit, jig: SetupJig) => PaperDrawing | null;
