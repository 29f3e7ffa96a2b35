import type { Corner } from '../fastening/types.ts';
import type { Point } from '../geometry/types.ts';
import type { ContactSurface, Pose, Vec3 } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';

/**
 * The seat scene in plain data, lengths in mm, in the back view: x to the right, y up, z out of the back of
 * the front. Origin at the lower left corner of the face outline; the cabinet's left edge is at x = front width.
 */

/** What is moved as one: the jig with all of its pieces, the box with all of its walls. */
export type Group = 'front' | 'jig' | 'box' | 'bit' | 'screw';

export type Material = 'front' | 'box' | 'jig' | 'key' | 'pin' | 'bit' | 'screw';

/** A stretch of a solid between two heights over its pose. */
export interface Layer {
  /** Counter-clockwise, straight sides. */
  readonly outline: readonly Point[];
  /** The outline at its upper end, corner by corner, where it differs: a bevelled edge. */
  readonly top?: readonly Point[];
  /** Clockwise, straight sides. */
  readonly holes: readonly (readonly Point[])[];
  readonly from: number;
  readonly to: number;
}

/** A solid of one or more layers on top of one another. */
export interface Solid {
  /** Unique in a scene. */
  readonly id: string;
  /** What people call it. */
  readonly name: string;
  readonly group: Group;
  readonly material: Material;
  readonly pose: Pose;
  readonly layers: readonly Layer[];
  /** Lines drawn on its surface: joints between the members of a five-piece front. */
  readonly lines: readonly Line[];
  /** How far it is moved when the scene is drawn wholly apart. */
  readonly apart: Vec3;
  /** Drawn as edges only, so that one sees past it. */
  readonly ghost: boolean;
  /** Where it starts from in the step that sends its group in, from its seat along its own axis. */
  readonly travel?: Vec3;
  /** Of a bit or a screw: the corner of the box that it belongs to. */
  readonly corner?: Corner;
}

export type Line = readonly [Vec3, Vec3];

/** Where a piece of the jig touches something: a flat face, or on a bevelled edge only a line. */
export interface SceneContact {
  readonly id: string;
  readonly on: ContactSurface;
  /** Of the front or of the box, where it is a side of it. */
  readonly edge: Edge | null;
  /** The solid of the jig that touches. */
  readonly solid: string;
  readonly shape:
    | {
        readonly kind: 'area';
        readonly outline: readonly Vec3[];
        readonly holes: readonly (readonly Vec3[])[];
        /** Out of what is touched, towards the jig. */
        readonly normal: Vec3;
      }
    | { readonly kind: 'line'; readonly line: Line };
}

/** An overhang that the jig sets, from the face's outline to the box. */
export interface Dimension {
  readonly id: string;
  readonly edge: Edge;
  /** mm; negative where the box stands proud. */
  readonly overhang: number;
  /** From the face's outline to the box. */
  readonly line: Line;
  /** Away from the jig, length 1: its words stand off that way. */
  readonly side: Vec3;
  /** Witness lines from the edge and from the box. */
  readonly witnesses: readonly Line[];
}

export interface Arrow {
  readonly text: string;
  readonly line: Line;
}

/** A space that no piece of the jig may enter. */
export interface KeepOut {
  readonly id: string;
  readonly why: string;
  readonly min: Vec3;
  readonly max: Vec3;
}

export interface Move {
  readonly from: Vec3;
  readonly to: Vec3;
}

/** One step of using the jig. */
export interface Step {
  readonly id: 'front' | 'seat' | 'box' | 'drill' | 'drive' | 'lift';
  readonly title: string;
  readonly words: string;
  /** What is on the bench by the end of it. */
  readonly shown: readonly Group[];
  /** How what moves comes to its place, or leaves it. */
  readonly moves: Readonly<Partial<Record<Group, Move>>>;
  /** The group whose solids go in, each along its own axis. */
  readonly sendsIn?: Group;
  /** Faces that touch by the end of it. */
  readonly touching: readonly ContactSurface[];
  /** Which way the tool goes; the places are an example. */
  readonly tools: readonly Arrow[];
}

/** Where one looks from: degrees about z from +x, and degrees above the bench. */
export interface StandardView {
  readonly id: 'three-quarter' | 'above' | 'edge' | 'side';
  readonly title: string;
  readonly azimuth: number;
  readonly elevation: number;
  /** The middle of what must be seen. */
  readonly focus: Vec3;
  /** From there to the sides, and to top and bottom. */
  readonly half: Extent;
}

/** mm in the plane of a picture. */
export interface Extent {
  readonly across: number;
  readonly up: number;
}

/** A plane across the edge in use. What lies beyond it on the positive side is cut away. */
export interface Section {
  readonly axis: 'x' | 'y';
  /** 1: the view from the side looks from +axis. */
  readonly side: 1 | -1;
  /** The middle of the jig. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

export interface SeatScene {
  readonly jig: { readonly id: string; readonly kind: string; readonly hand: 'left' | 'right' | null };
  /** The edges in use: one, or the two of a corner. */
  readonly edges: readonly Edge[];
  readonly drawer: string;
  readonly front: { readonly w: number; readonly h: number; readonly thickness: number };
  readonly solids: readonly Solid[];
  /** Bits and screws on their true axes; they are there only in the steps that show their group. */
  readonly tools: readonly Solid[];
  readonly contacts: readonly SceneContact[];
  readonly dimensions: readonly Dimension[];
  readonly cabinetLeft: {
    readonly arrow: Arrow;
    /** The edge of the face that goes to the cabinet's left. */
    readonly edge: Line;
  };
  readonly keepOuts: readonly KeepOut[];
  readonly steps: readonly Step[];
  readonly views: readonly StandardView[];
  readonly section: Section;
  /** The middle of the jig. */
  readonly middle: Vec3;
  /** What is drawn otherwise than it is, in words. */
  readonly notes: readonly string[];
}
