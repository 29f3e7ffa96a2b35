import type { Edge, EdgeCondition, LengthUnit, MemberName } from '../order/types.ts';
import type { FasteningRule, PullRule } from './fastening-types.ts';
import type { FrontWood, PanelGroove, Species } from './wood-types.ts';

/** A value of the shop standard and where it comes from. */
export interface Sourced<T> {
  readonly value: T;
  /** A document, or `common practice, no source`. */
  readonly source: string;
}

/** A length in mm with its source. */
export type SourcedLength = Sourced<number>;

/** The condition of one edge: at the cabinet's outside, and where another drawer front is next to it. */
export interface EdgeRule {
  readonly outer: Sourced<EdgeCondition>;
  readonly shared: Sourced<EdgeCondition>;
}

export interface OverlayStyle {
  readonly name: string;
  readonly edges: Readonly<Record<Edge, EdgeRule>>;
  /** Extra bottom overhang in mm, by the situation of the bottom edge. */
  readonly startLow: { readonly outer: SourcedLength; readonly shared: SourcedLength };
  /** Back bevel of the front's edges in degrees: the back is smaller than the face. 0 is square. */
  readonly backBevel: Sourced<number>;
}

/** What one adjuster of a slide can do: a signed range in mm, from -most to +most. Both 0: it has none. */
export interface AdjusterRange {
  readonly least: SourcedLength;
  readonly most: SourcedLength;
  /** mm for one turn or click; 0 where the slide's data does not say. */
  readonly step: SourcedLength;
  /** What one step is called: `turn`, `click`. */
  readonly stepName: string;
}

/** The adjusters of a pair of slides. */
export interface SlideAdjusters {
  /** + raises the front. Left and right have one each, so a front can be turned in its plane too. */
  readonly height: AdjusterRange;
  /** + moves the front to the cabinet's right. */
  readonly side: AdjusterRange;
  /** + moves the front out of the cabinet. */
  readonly depth: AdjusterRange;
  /** + leans the top edge of the front out of the cabinet, mm at that edge. */
  readonly tilt: AdjusterRange;
}

export interface SlideRule {
  /** Box side to opening side, each side, mm. */
  readonly runningClearance: SourcedLength;
  /** Opening floor to box bottom with the slide at its lowest setting, mm. */
  readonly lift: SourcedLength;
  /** Least room between box top and opening top, mm. */
  readonly topClearance: SourcedLength;
  /** Height of the slide's member on the box side, which jigs pass; 0 where the slide is under the box, mm. */
  readonly sideMember: SourcedLength;
  /** How far a given box may differ in width from the slide's need before a warning, mm. */
  readonly widthTolerance: SourcedLength;
  readonly adjusters: SlideAdjusters;
}

/** What a kind of cabinet has that differs from the standard. */
export interface CabinetKind {
  readonly members: Readonly<Partial<Record<MemberName, SourcedLength>>>;
  readonly slide?: string;
}

export type ToleranceSource = 'opening' | 'box' | 'front' | 'jig' | 'seating' | 'slide';

/** A tolerance of ±value mm with the shape of its distribution. */
export interface Tolerance extends SourcedLength {
  readonly distribution: 'normal' | 'uniform' | 'triangular';
}

export interface ShopStandard {
  readonly name: string;
  readonly note: string;
  /** Unit in which this shop reads lengths. */
  readonly unit: LengthUnit;
  readonly construction: 'face frame' | 'frameless';
  readonly members: Readonly<Record<MemberName, SourcedLength>>;
  readonly slides: Readonly<Record<string, SlideRule>>;
  /** The slide that a cabinet has unless its kind says otherwise; a key of `slides`. */
  readonly slide: string;
  readonly styles: readonly OverlayStyle[];
  readonly cabinetKinds: Readonly<Record<string, CabinetKind>>;
  readonly front: {
    readonly thickness: SourcedLength;
    readonly wood: FrontWood;
    readonly groove: PanelGroove;
  };
  readonly box: {
    readonly sideThickness: SourcedLength;
    readonly frontThickness: SourcedLength;
    /** From the back of the front to the back of the box, where the order gives none. */
    readonly depth: SourcedLength;
    readonly bottom: {
      readonly thickness: SourcedLength;
      /** From the lower edge of the sides up to the bottom's underside. */
      readonly raised: SourcedLength;
    };
  };
  readonly species: Readonly<Record<string, Species>>;
  readonly fastening: FasteningRule;
  /** By the word that a `pull` cell begins with: `bar`, `cup`, `knob`. */
  readonly pulls: Readonly<Record<string, PullRule>>;
  readonly limits: {
    /** Predicted gaps below this get a warning, mm. */
    readonly smallestGap: SourcedLength;
    /** A given size may differ this much from the derived one before a warning, mm. */
    readonly sizeDifference: SourcedLength;
  };
  readonly tolerances: Readonly<Record<ToleranceSource, Tolerance>>;
}
