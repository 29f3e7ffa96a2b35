import type { Corner, Fastening } from '../../../fastening/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import type { Edge } from '../../../order/types.ts';
import type { PaperDrawing } from '../page/types.ts';

/** A jig on a drawer, and the edges that it is used at there. */
export interface SetupJig {
  readonly id: string;
  /** Name of its kind: `bottom fence`. */
  readonly kind: string;
  readonly edges: readonly Edge[];
  /** mm. What it sets at each of the edges. */
  readonly sets: readonly number[];
  /** It serves two overhangs, and a label on top tells which way it lies. */
  readonly twoWay: boolean;
}

/** A drill guide at a corner of the box, or, without a corner, a template for the pull. */
export interface SetupAid {
  readonly id: string;
  readonly corner: Corner | null;
  /** The screws of that corner that it guides, by their `index`, and how many bores it has. */
  readonly screws: readonly number[];
  readonly bores: number;
}

export interface SetupMember {
  /** With the overhangs that its jigs set: shared ones may be off from those wanted. */
  readonly fit: DrawerFit;
  /** mm. How far the side adjuster must move the front to put that right; + is to the cabinet's right. */
  readonly sideways: number;
  readonly fastening: Fastening | null;
  /** Id of its paper template; null where none is printed. */
  readonly template: string | null;
}

/** Drawers of a setup that are screwed on in the same way, through the same guides. */
export interface SetupVariant {
  /** `3`, or `3b` where the setup has several. */
  readonly name: string;
  readonly aids: readonly SetupAid[];
  readonly members: readonly SetupMember[];
}

/** Drawers that one page serves: the same jigs at the same overhangs, the same screw and bit. */
export interface PaperSetup {
  readonly number: number;
  readonly jigs: readonly SetupJig[];
  /** One at least. */
  readonly variants: readonly SetupVariant[];
}

/** The drawers of all variants of a setup. */
export const membersOf = ({ variants }: PaperSetup): readonly SetupMember[] =>
  variants.flatMap(({ members }) => members);

/** A picture of a jig in its seat on a drawer; null where there is none. */
export type SeatPicture = (fit: DrawerFit, jig: SetupJig) => PaperDrawing | null;
