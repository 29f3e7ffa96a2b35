import type { Point } from '../../geometry/types.ts';
import type { BuildContext, FrontEdge, Jig, ParameterSpec } from '../types.ts';

/**
 * One kind of aid to drilling; each is one file, and `kinds.ts` lists them. Unlike a jig kind it serves one
 * set-up of its own sort, and sets no overhang.
 */
export interface AidKind<Setup> {
  readonly name: string;
  /** Letter of its ids. */
  readonly code: string;
  readonly registersOn: string;
  readonly parameters: readonly ParameterSpec[];
  /** How its parts go together, and how it is used, for someone who has never seen one. */
  readonly assembly: string;
  readonly use: string;
  /** Why this kind cannot serve this set-up with this machine, or null when it can. */
  readonly refuses: (setup: Setup, context: BuildContext) => string | null;
  /**
   * All that the aid depends on besides its id: of set-ups that say the same here the very same is built. Absent where
   * that is the whole set-up.
   */
  readonly builtFrom?: (setup: Setup, context: BuildContext) => object;
  /** Builds the aid; throws where `refuses` would have answered. */
  readonly build: (id: string, setup: Setup, context: BuildContext) => Jig;
}

/** A hole to guide, measured inwards from the two faces that meet in the corner; mm. */
export interface GuidePlace {
  /** Of the screw in its row, 0 for the corner's own; names the bore on the label. */
  readonly index: number;
  /** Where the axis meets the inside face of the box front. */
  readonly at: Point;
  /** How far the axis moves for each mm away from that face; 0, 0 where it is square to it. */
  readonly slope: Point;
  /** Along the axis from that face to the end of the hole. */
  readonly depth: number;
}

/** What a corner drill guide must do, and what it must fit into. Lengths in mm. */
export interface GuideSetup {
  readonly hand: 'left' | 'right';
  readonly end: 'bottom' | 'top';
  /** Nearest to the corner first. */
  readonly places: readonly GuidePlace[];
  readonly bit: number;
  /** Diameter of the bore: the bit's and its play, or the bushing's. */
  readonly bore: number;
  /** Between bit and what guides it, over the diameter. */
  readonly play: number;
  /** The bore holds a bushing in which the bit runs. */
  readonly bushed: boolean;
  /** Least length that guides the bit. */
  readonly guided: number;
  /** Names of the screws that it is for. */
  readonly screws: readonly string[];
  /** Thickness of the thinnest box front. */
  readonly boxFront: number;
  /** Inside the smallest box: between its sides, and from the corner's end face to the other end. */
  readonly room: Point;
}

/** What a pull template must do. Lengths in mm. */
export interface TemplateSetup extends FrontEdge {
  /**
   * The front's top corner that it registers at, or `middle`: only the top edge, and a pencilled centre line.
   */
  readonly at: 'left' | 'right' | 'middle';
  /** Centres of the holes inwards from the side edge (from the centre line) and from the top edge of the face. */
  readonly holes: readonly Point[];
  readonly bit: number;
  readonly bore: number;
  /** Width and height of the smallest front. */
  readonly front: Point;
}
