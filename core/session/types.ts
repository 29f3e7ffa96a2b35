import type { Finding } from '../findings/finding.ts';
import type { Corner, Fastening } from '../fastening/types.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import type { SeasonBudget } from '../fit/seasons/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Sharing } from '../jigs/sharing/types.ts';
import type { Jig } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import type { Feature, Part } from '../parts/types.ts';

/** A finding and the row of the draft that it is about, where it is about one. */
export interface DraftFinding {
  readonly rowId: string | null;
  readonly finding: Finding;
}

/** Which jig is used on which row's drawer, at which edge, for which overhang (mm) of the jig. */
export interface DraftUse {
  readonly rowId: string;
  readonly edge: Edge;
  readonly jigId: string;
  readonly overhang: number;
  /** mm. The overhang wanted less the jig's; 0 where drawers share no jigs. */
  readonly adjustment: number;
}

/** Which drill guide or pull template is used on which row's drawer; of a guide, at which corner of the box. */
export interface DraftAid {
  readonly rowId: string;
  readonly corner: Corner | null;
  readonly jigId: string;
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
  /** Whether all of it has been worked out: of a first look only fits and overhang jigs have. */
  readonly isWhole: boolean;
  readonly findings: readonly DraftFinding[];
  readonly fits: Readonly<Record<string, DrawerFit>>;
  /** Whether each row's front comes into its gaps, without samples; and how it moves over the year. */
  readonly budgets: Readonly<Record<string, AdjustmentBudget>>;
  readonly seasons: Readonly<Record<string, SeasonBudget>>;
  /** How each row's front is screwed on; rows that have a jig have one. */
  readonly fastenings: Readonly<Record<string, Fastening>>;
  /** Jigs that set overhangs, then aids to drilling. */
  readonly jigs: readonly Jig[];
  readonly aids: readonly DraftAid[];
  readonly uses: readonly DraftUse[];
  /** Which drawers share jigs, and what is known of it; null where each distinct overhang has its own. */
  readonly sharing: Sharing | null;
  readonly parts: readonly PartSummary[];
}
