import type { Finding } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Jig } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import type { Feature, Part } from '../parts/types.ts';

/** A finding and the row of the draft that it is about, where it is about one. */
export interface DraftFinding {
  readonly rowId: string | null;
  readonly finding: Finding;
}

/** Which jig is used on which row's drawer, at which edge, for which overhang (mm). */
export interface DraftUse {
  readonly rowId: string;
  readonly edge: Edge;
  readonly jigId: string;
  readonly overhang: number;
}

/** A part without its contours, which are asked for when they are looked at. */
export type PartSummary = Omit<Part, 'features'>;

/** A part as it is drawn, and as the machine follows it. */
export interface PartDetail {
  readonly part: Part;
  /** Moved by half the kerf as the machine profile says; equal to the part's where nothing is moved. */
  readonly followed: readonly Feature[];
}

/**
 * All that a draft comes to. A row whose cells are wrong, or without room for a box or a front, has no fit; a
 * row whose fit is an error has a fit to be seen, but no jig.
 */
export interface Designed {
  /** Of the draft that it was made from; counts up. */
  readonly revision: number;
  readonly findings: readonly DraftFinding[];
  readonly fits: Readonly<Record<string, DrawerFit>>;
  readonly jigs: readonly Jig[];
  readonly uses: readonly DraftUse[];
  readonly parts: readonly PartSummary[];
}
