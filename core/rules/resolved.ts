import type { Edge, MemberName } from '../order/types.ts';
import type { ResolvedCondition } from './overlay.ts';
import type { Sourced, SourcedLength } from './types.ts';

/** An edge is at the outside of its cabinet, or another drawer front is next to it. */
export type Situation = 'outer' | 'shared';

/** What one edge of one drawer gets from the order or the standard. Lengths in mm. */
export interface ResolvedEdge {
  readonly condition: ResolvedCondition;
  /** How far the front laps over the opening; negative when it stands inside. */
  readonly overlay: number;
  /** Of the condition: the standard's source, or `order` and the row when a cell gave it. */
  readonly source: string;
  readonly situation: Situation;
}

/** All that the standard and the order say of one drawer. Lengths in mm, angles in degrees. */
export interface ResolvedRules {
  readonly edges: Readonly<Record<Edge, ResolvedEdge>>;
  /** Extra bottom overhang, so that the slide's height adjuster, which only raises, has work to do. */
  readonly startLow: SourcedLength;
  readonly runningClearance: SourcedLength;
  readonly lift: SourcedLength;
  readonly topClearance: SourcedLength;
  /** Height of the slide's member on the box side; 0 where there is none. */
  readonly sideMember: SourcedLength;
  readonly widthTolerance: SourcedLength;
  /** Degrees. */
  readonly backBevel: Sourced<number>;
  readonly slideName: string;
  /** Widths of the cabinet's members, with those of its kind in the place of the standard's. */
  readonly members: Readonly<Record<MemberName, SourcedLength>>;
}
