import type { ClosedContour, PathContour, Point, RingContour } from '../geometry/types.ts';
import type { Edge, LengthUnit } from '../order/types.ts';
import type { MachineProfile } from '../machine/profile.ts';

/** x to the right, y up, z out of the back of the front towards whoever works on it; mm. */
export interface Vec3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Where a flat piece is: its own x runs along `u`, its y along `v`, its thickness along u x v. */
export interface Pose {
  readonly origin: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
}

/** What a jig touches in its seat; `box` is its outside. */
export type ContactSurface =
  | 'front edge'
  | 'front back'
  | 'box'
  | 'box side inside'
  | 'box bottom'
  | 'box front inside'
  | 'box top edge';

/** A face of a piece that touches something: a side of the outline, or the flat underside. */
export interface Contact {
  readonly piece: string;
  readonly on: ContactSurface;
  /** The touching line in the piece's own coordinates; the underside has none. */
  readonly line?: readonly [Point, Point];
}

/** The pose in which a jig touches every face that it registers on. */
export interface Seat {
  /**
   * Where the poses are given. `edge`: the middle of the edge's face outline, x along the edge, y inwards
   * (`edge-frame.ts`). `corner`: the lower corner of the face outline on the jig's own hand, in the back view.
   * `top corner` and `box corner`: see `aids/aid-frame.ts`.
   */
  readonly frame: 'edge' | 'corner' | 'top corner' | 'box corner';
  readonly sets: readonly Setting[];
  /** One pose for each copy of a piece. */
  readonly poses: readonly { readonly piece: string; readonly pose: Pose }[];
  readonly contacts: readonly Contact[];
}

export interface Setting {
  /** The edges that it may be used on: both sides for a jig that is not handed. */
  readonly edges: readonly Edge[];
  /** mm, from the face's outline to the box. */
  readonly overhang: number;
  /** Degrees of back bevel that the jig is made for. */
  readonly backBevel: number;
  /** mm. Of the thinnest front that it serves; on a bevelled edge, of all of them. */
  readonly frontThickness: number;
}

/** Text to engrave in a rectangle of a piece; the parts stage makes it as large as fits. */
export interface Label {
  /** What must be read from afar, larger than the rest where there is room: id and overhang. */
  readonly title?: string;
  /** Phrases in reading order; a line breaks only between them. */
  readonly phrases: readonly string[];
  readonly center: Point;
  /** Along the text, mm. */
  readonly width: number;
  /** Across the text, mm. */
  readonly height: number;
  /** Degrees counter-clockwise by which the text is turned about its centre. */
  readonly angle?: number;
}

export interface Hole {
  readonly contour: ClosedContour;
  /** `bore`: it guides a drill, and is drilled itself where a router's tool is wider than it. */
  readonly purpose: 'joint' | 'hang' | 'bore';
  /** Inside corners that something square seats in. */
  readonly seatCorners: readonly Point[];
}

/** A region that is cut to a depth from the engraved face, mm. */
export interface Pocket {
  readonly contour: RingContour;
  readonly depth: number;
}

/** One flat piece of sheet before any machine is considered. The engraved face looks up, out of the page. */
export interface Piece {
  readonly name: string;
  readonly copies: number;
  readonly outline: RingContour;
  readonly holes: readonly Hole[];
  readonly pockets: readonly Pocket[];
  /** Inside corners of the outline that something seats in: they get a relief. */
  readonly seatCorners: readonly Point[];
  readonly labels: readonly Label[];
  /** Lines to engrave besides text. */
  readonly marks?: readonly PathContour[];
}

/**
 * How much the overhang that a jig sets changes when a dimension is off: mm per mm, with the reason. Of an aid
 * to drilling: how far its bores move from what it registers on, without sign; `Drilling` has the direction.
 */
export interface Sensitivity {
  /** To an error of the kerf that was compensated, or to the whole kerf when none was. */
  readonly kerf: number;
  readonly sheetThickness: number;
  readonly why: string;
}

/** A registration edge as the jig meets it. */
export interface FrontEdge {
  /** mm */
  readonly frontThickness: number;
  /** Degrees by which the edge leans in towards the back. */
  readonly backBevel: number;
}

/** What one use of a jig must set, and what it must not foul. Lengths in mm. */
export interface Setup extends FrontEdge {
  readonly edge: Edge;
  readonly overhang: number;
  /** Length of the shortest front edge that it is used on. */
  readonly edgeLength: number;
  /** Length of the shortest box along that edge. */
  readonly boxLength: number;
  /** The longest stretch along that edge on which a jig passes a slide on the box; endless where there is none. */
  readonly clearLength: number;
  /** How far up the box, from the back of the front, a bottom jig may touch it: the thinnest box front. */
  readonly boxReach: number;
}

/** What the shop has and how it marks its jigs. */
export interface BuildContext {
  readonly machine: MachineProfile;
  readonly unit: LengthUnit;
  /** Engraved on every jig: the order's name, and its date if it has one. */
  readonly order: readonly string[];
}

export interface Jig {
  readonly id: string;
  readonly kind: string;
  readonly hand: 'left' | 'right' | null;
  /** The values of the kind's parameters, mm and degrees. */
  readonly parameters: Readonly<Record<string, number>>;
  readonly pieces: readonly Piece[];
  /** Round pins to be bought, where the machine profile joins layers with pins. */
  readonly pins: readonly Pin[];
  readonly seats: readonly Seat[];
  readonly sensitivity: Sensitivity;
  /** Of a guide or template: the holes that it places. Absent on jigs that set an overhang. */
  readonly drilling?: Drilling;
}

/** One hole that an aid guides a drill to. Lengths in mm, in the frame of the aid's seat. */
export interface Bore {
  /** Where its axis meets the face that is drilled. */
  readonly at: Point;
  /** How far the axis moves for each mm away from that face; 0, 0 where it is square to it. */
  readonly slope: Point;
  /** Degrees between the axis and the square way in. */
  readonly angle: number;
  /** Of the bore, and of the bit that runs in it or in its bushing. */
  readonly diameter: number;
  readonly bit: number;
  /** How far each layer's hole lies off the one below it. */
  readonly shift: Point;
  /** Length of bit that is held on all sides. */
  readonly guided: number;
  /** Farthest that a layer's upright wall stands off the slanted cylinder. */
  readonly step: number;
  /** Farthest that an edge which guides the bit is off the cylinder: what arcs leave of the ellipse. */
  readonly edgeGap: number;
  /** How far off its place, and how far off its angle in degrees, the bit's play lets it enter. */
  readonly play: number;
  readonly tilt: number;
  /** Along the axis from the face that is drilled to the end of the hole; null for a hole right through. */
  readonly depth: number | null;
  /** Along the axis from the aid's upper face to the end of the hole: the setting of the depth stop. */
  readonly stop: number | null;
}

/** What an aid to drilling places, and how well. */
export interface Drilling {
  /** Which edge of box or front it registers at. */
  readonly end: 'bottom' | 'top';
  /** mm. From the face that is drilled to the aid's upper face, against which the depth stop comes. */
  readonly thickness: number;
  /** Nearest to the corner first. */
  readonly bores: readonly Bore[];
  /** mm for each mm of kerf that is cut and not compensated, in the frame of the seat. */
  readonly kerfShift: Point;
  /** What must be known of it, in sentences. */
  readonly words: readonly string[];
}

/** Round pins of one size, mm. */
export interface Pin {
  readonly count: number;
  readonly diameter: number;
  readonly length: number;
}

/** A parameter of a jig kind, with what it means and its limits. */
export interface ParameterSpec {
  readonly name: string;
  /** As in `a side overhang of 300 mm is above the most`. */
  readonly words: string;
  readonly meaning: string;
  readonly unit: 'mm' | 'deg' | 'pieces';
  readonly min: number;
  readonly max: number;
}

/** One kind of jig; each is one file, and `kinds.ts` lists them. */
export interface JigKind {
  readonly name: string;
  /** Letter of its jigs' ids. */
  readonly code: string;
  readonly registersOn: string;
  readonly parameters: readonly ParameterSpec[];
  /** How its parts go together, and how it is used, for someone who has never seen one. */
  readonly assembly: string;
  readonly use: string;
  /** Why this kind cannot serve these set-ups with this machine, or null when it can. */
  readonly refuses: (setups: readonly Setup[], context: BuildContext) => string | null;
  /** Builds the jig; throws where `refuses` would have answered. */
  readonly build: (id: string, setups: readonly Setup[], context: BuildContext) => Jig;
}
