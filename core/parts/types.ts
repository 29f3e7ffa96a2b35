import type { Contour } from '../geometry/types.ts';
import type { Bore } from '../jigs/types.ts';
import type { Operation } from '../machine/operations.ts';
import type { Edge } from '../order/types.ts';

export interface Feature {
  readonly operation: Operation;
  readonly contour: Contour;
  /** Depth from the upper face in mm, for pockets and blind holes; absent means through. */
  readonly depth?: number;
}

/** One flat piece of sheet, as drawn for a file: geometry in mm, engraved face up. */
export interface Part {
  /** Unique in an export and safe as a file name: `B1-plate`. */
  readonly id: string;
  readonly jig: string;
  readonly title: string;
  /** How many to cut. */
  readonly copies: number;
  readonly thickness: number;
  readonly material: string;
  readonly hand: 'left' | 'right' | null;
  readonly features: readonly Feature[];
  /** What the jig that it belongs to sets. */
  readonly sets: readonly {
    readonly edges: readonly Edge[];
    /** mm */
    readonly overhang: number;
    /** Degrees. */
    readonly backBevel: number;
    /** mm */
    readonly frontThickness: number;
  }[];
  /** The holes that its jig places, in the frame of the jig's seat, mm; absent where it sets overhangs. */
  readonly drills?: readonly Bore[];
}
