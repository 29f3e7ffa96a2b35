import type { SlideAdjusters } from '../../rules/types.ts';
import type { FrontCorner, Move } from '../budget/places.ts';

/** What is read at one corner of a closed drawer, mm. Whatever was not read is left out. */
export interface CornerReading {
  /** Gap beside the corner, at the front's left or right edge. */
  readonly side?: number;
  /** Gap above or below the corner, at the front's top or bottom edge. */
  readonly end?: number;
  /** How far the corner stands out of the cabinet's face; - when it stands back. */
  readonly proud?: number;
}

export type SeenGaps = Readonly<Partial<Record<FrontCorner, CornerReading>>>;

/** Where the adjusters stand, mm in their signed ranges. */
export interface AdjusterSettings extends Move {
  readonly depth: number;
  readonly tilt: number;
}

/** An adjuster that a hand turns. */
export type AdjusterName = keyof AdjusterSettings;

/** Turn one adjuster. */
export interface AdjusterMove {
  readonly adjuster: AdjusterName;
  /** mm, in whole steps where the slide's data gives them; + is up, to the cabinet's right, out, top out. */
  readonly by: number;
  /** Before rounding to steps, mm. */
  readonly exact: number;
  /** The same as `by` in the adjuster's own steps, with its sign; null where the slide's data has none. */
  readonly steps: { readonly count: number; readonly name: string } | null;
  /** For people: `Raise the left side by 1.5 mm: 3 clicks.` */
  readonly words: string;
}

/** Something that no adjuster of this slide cures. */
export interface Incurable {
  readonly what:
    | 'width'
    | 'height'
    | 'side taper'
    | 'end taper'
    | 'out of square'
    | 'twist'
    | 'one side out'
    | 'range';
  /** mm; its sign is told in the words. */
  readonly amount: number;
  readonly words: string;
}

/** How to bring one front into its gaps. */
export interface DialIn {
  /** In the order in which to do them. */
  readonly moves: readonly AdjusterMove[];
  /** What was read, after these moves. */
  readonly after: SeenGaps;
  /** The largest difference that is left between a gap and the one wanted, mm; null where none was read. */
  readonly left: number | null;
  readonly incurable: readonly Incurable[];
  /** What the readings do not tell. */
  readonly notes: readonly string[];
}

/** Which adjuster of the slide's data a hand turns. */
export const ADJUSTER_OF: Readonly<Record<AdjusterName, keyof SlideAdjusters>> = {
  heightLeft: 'height',
  heightRight: 'height',
  side: 'side',
  depth: 'depth',
  tilt: 'tilt',
};
