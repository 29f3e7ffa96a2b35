import type { LimitName, Margin } from '../fastening/types.ts';

/**
 * A point of a section: `in` is mm from the edge of the front's face inwards, `up` is mm out of the back of the
 * front. A section is drawn with the edge at the left, whichever side of the front it is at.
 */
export interface SectionPoint {
  readonly in: number;
  readonly up: number;
}

/** What is cut: the front's frame or slab, its panel, its panel's groove, and the box. */
export type SectionMaterial = 'front' | 'panel' | 'groove' | 'box front' | 'box side' | 'box bottom';

export interface SectionShape {
  readonly id: string;
  readonly material: SectionMaterial;
  readonly outline: readonly SectionPoint[];
}

/** What goes through it. */
export interface SectionTool {
  readonly id: string;
  readonly part: 'head' | 'screw' | 'pilot' | 'driver';
  /** As people call it: `chuck`. */
  readonly name: string;
  readonly outline: readonly SectionPoint[];
}

/** One limit between two points of the drawing. */
export interface SectionDimension {
  readonly limit: LimitName;
  readonly from: SectionPoint;
  readonly to: SectionPoint;
  /** mm between the two. */
  readonly is: number;
  /** mm asked for. */
  readonly least: number;
  readonly fails: boolean;
}

/** A screw to scale, seen along the edge that the section goes across. */
export interface ScrewSection {
  readonly across: 'side' | 'rail';
  /** `across the side to the cabinet's left`. */
  readonly title: string;
  readonly shapes: readonly SectionShape[];
  readonly tools: readonly SectionTool[];
  readonly dimensions: readonly SectionDimension[];
  /** All margins of the place, also those that this section cannot show. */
  readonly margins: readonly Margin[];
  /** What must be seen, mm. */
  readonly extents: {
    readonly in: readonly [number, number];
    readonly up: readonly [number, number];
  };
}
