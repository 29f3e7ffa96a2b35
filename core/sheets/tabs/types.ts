import type { PathContour, Point, RingContour } from '../../geometry/types.ts';

/** How parts are held in the sheet until they are broken out. Lengths in mm. */
export interface TabSettings {
  /** Of a tab, along the cut. */
  readonly width: number;
  /** Along the outline, from one tab to the next at most, where straight stretches allow it. */
  readonly every: number;
  /** From a tab to either end of the straight stretch on which it stands. */
  readonly fromCorner: number;
  /** Full width of the cut. */
  readonly kerf: number;
  /** How far a mark reaches on either side of the outline. */
  readonly reach: number;
}

/** Usual settings of a tool or beam; common practice, no source. */
export const usualTabs = (kind: 'laser' | 'router', kerf: number): TabSettings =>
  kind === 'router'
    ? { width: 6, every: 200, fromCorner: Math.max(6, kerf), kerf, reach: reachOf(kerf) }
    : { width: 0.6, every: 150, fromCorner: 3, kerf, reach: reachOf(kerf) };

/** A mark is seen from 2 mm on, and crosses the whole cut; common practice, no source. */
const reachOf = (kerf: number): number => Math.max(2, kerf);

/** A tab: the middle of it on the outline, and the side of the outline that it stands on. */
export interface TabPlace {
  /** Index of the outline's segment. */
  readonly segment: number;
  /** mm from the segment's start. */
  readonly along: number;
  readonly at: Point;
  /** Unit vector along the outline. */
  readonly direction: Point;
}

/**
 * What a file shows of tabs, by the way that the machine's program makes them:
 * `marks` leaves the outline closed, as cut files must have it, and gives short lines across the cut for a layer of
 * their own, where whoever programs the machine lets the tool rise;
 * `bridges` breaks the outline itself, for lasers that follow what is drawn.
 */
export type Tabs =
  | { readonly mode: 'marks'; readonly outline: RingContour; readonly marks: readonly PathContour[] }
  | { readonly mode: 'bridges'; readonly stretches: readonly PathContour[] };
