import type { Sourced, SourcedLength } from './types.ts';

export type HeadKind = 'flat' | 'pan' | 'round washer';

/** A wood screw that the shop stocks. Lengths in mm. */
export interface StockScrew {
  /** What the shop calls it: `#8 x 1-1/4 in pan`. */
  readonly name: string;
  /** Trade number; 0 to 24. */
  readonly gauge: number;
  readonly head: HeadKind;
  /** Over the threads. */
  readonly diameter: SourcedLength;
  /** At the bottom of the threads. */
  readonly root: SourcedLength;
  readonly headDiameter: SourcedLength;
  /** From under a pan or washer head, or from the top of a flat one, to the tip. */
  readonly length: SourcedLength;
  /** Threaded length from the tip; the whole length on a fully threaded screw. */
  readonly thread: SourcedLength;
}

/** One of the coaxial cylinders that a driver is, from the screw's head outwards. Lengths in mm. */
export interface DriverPart {
  readonly name: string;
  readonly radius: SourcedLength;
  readonly length: SourcedLength;
}

/** How the holes of a screw are made, so that it pulls the joint shut. */
export type HolePlan = 'pilot through both' | 'clearance in the box front';

/** How a shop screws fronts to boxes. Lengths in mm. */
export interface FasteningRule {
  /** What the shop stocks; the one with the most margin is chosen. */
  readonly stock: readonly StockScrew[];
  /** Diameters of the drill bits at hand, ascending. */
  readonly bits: readonly SourcedLength[];
  /** Least wood between the tip of the screw and the face. */
  readonly cover: SourcedLength;
  /** Least length of screw in the front, along the screw. */
  readonly bite: SourcedLength;
  /** Least wood between the screw's thread and the edge of the wood that it is in. */
  readonly edgeMargin: SourcedLength;
  /** Least room between the screw's head and the box's side, bottom and edges. */
  readonly headRoom: SourcedLength;
  /** Least wood between the screw and a pull's hole. */
  readonly pullRoom: SourcedLength;
  /** Least room between the driver and the box. */
  readonly driverRoom: SourcedLength;
  /** Where a corner screw goes when nothing is against it: from the inside faces of the box. */
  readonly place: { readonly side: SourcedLength; readonly height: SourcedLength };
  /** No two neighbouring screws of a row are further apart. */
  readonly spacing: SourcedLength;
  /** Degrees; a screw leans no further. */
  readonly largestAngle: Sourced<number>;
  /** Degrees; angles of guides are whole multiples of it, rounded up where the limits allow. */
  readonly angleStep: Sourced<number>;
  readonly holes: Sourced<HolePlan>;
  /** Pull in newtons that all screws of a front hold together. */
  readonly pull: Sourced<number>;
  /** The handbook's capacity is an ultimate one: it is divided by this. */
  readonly safety: Sourced<number>;
  /** From the screw's head outwards. */
  readonly driver: readonly DriverPart[];
  readonly guide: {
    /** Added to the bit's diameter for a bore that guides it. */
    readonly boreFit: SourcedLength;
    /** Least length of bore that guides the bit, in bit diameters. */
    readonly boreLength: Sourced<number>;
    /** Outer diameter of the drill bushing; 0 where the bit runs in the plate itself. */
    readonly bushing: SourcedLength;
  };
}

/** How pulls of one sort sit on a front. Lengths in mm. */
export interface PullRule {
  /** 1: a knob. 2: a bar or cup, whose centre distance the order may give. */
  readonly holes: 1 | 2;
  /** Centre distance of two holes where the order gives none; 0 for a knob. */
  readonly centers: SourcedLength;
  readonly holeDiameter: SourcedLength;
  /** `middle`: half way up. `top`: this far below the front's top edge. */
  readonly height: { readonly from: 'middle' | 'top'; readonly distance: SourcedLength };
  /** Fronts at least this wide get two pulls, each at a quarter of the width. */
  readonly pairFrom: SourcedLength;
}
