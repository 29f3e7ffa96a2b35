import type { LengthUnit } from '../order/types.ts';
import type { Operation } from './operations.ts';

/** Where an operation goes in a cut file. */
export interface LayerStyle {
  /** `[A-Z0-9_-]`, at most 31 characters (requirement DXF-5). */
  readonly name: string;
  /** DXF colour number, 1 to 255, of the layer. */
  readonly colorIndex: number;
  /** `#rrggbb` of the SVG stroke. */
  readonly color: string;
}

/** A size of sheet in stock, of the material and thickness of the profile. Lengths in mm. */
export interface StockSize {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** How many there are; null: as many as wanted. */
  readonly count: number | null;
  /** Left over from other work: used up before whole sheets are. */
  readonly offcut: boolean;
}

/** How files for one machine are drawn. Lengths in mm. */
export interface MachineProfile {
  readonly name: string;
  /** Where the values come from and what to do before they are trusted. */
  readonly note: string;
  readonly kind: 'laser' | 'router' | 'none';
  /** What is on the bed, and its measured thickness. */
  readonly sheet: { readonly material: string; readonly thickness: number };
  /** How parts are laid out on sheets. */
  readonly sheets: {
    readonly stock: readonly StockSize[];
    /** From a part to the edge of its sheet. */
    readonly edgeMargin: number;
    /** Between two finished parts; a cut must go through. */
    readonly spacing: number;
    /** How far a part may be turned: by quarters, end for end (the grain stays), or not at all. */
    readonly turn: 'quarter' | 'half' | 'none';
    /** Steps of the search for a better layout; 0: the best first one. */
    readonly effort: number;
  };
  /** What holds parts in their sheet: nothing, marks on a layer of their own, or an outline cut in open stretches. */
  readonly tabs: {
    readonly use: 'none' | 'marks' | 'bridges';
    /** Of a tab, along the cut. */
    readonly width: number;
    /** Along the outline, from one tab to the next at most. */
    readonly spacing: number;
  };
  /** Full width of a cut (not per side). 0 for `none`. Of a router: the tool diameter. */
  readonly kerf: number;
  /** `file`: the drawn line is the centre of the cut. `machine`: the drawn line is the part. */
  readonly compensation: 'file' | 'machine';
  /** How the layers of a jig are held in register: round pins, or keys cut from the same sheet. */
  readonly joint: 'pin' | 'key';
  readonly pinDiameter: number;
  /** Added to a hole's diameter or a slot's width over what goes into it. */
  readonly fit: { readonly pin: number; readonly slot: number };
  /** Least radius of the relief in an inside corner that something seats in. */
  readonly reliefRadius: number;
  /** Height of capital letters of engraved text. */
  readonly capHeight: number;
  readonly layers: Readonly<Record<Operation, LayerStyle>>;
  readonly dxf: {
    readonly version: 'R12' | 'R2000';
    readonly unit: LengthUnit;
    /** Repeat the first point at the end of closed outlines, for importers that lose the last side. */
    readonly repeatFirstPoint: boolean;
    /** Draw arcs and circles as lines within 0.01 mm, for importers that ignore bulges. */
    readonly arcsAsLines: boolean;
  };
}
