import type { Contour, Point } from '../../../geometry/types.ts';

/** How a line is drawn. Widths and dashes in mm on the paper. */
export interface Stroke {
  readonly width: number;
  /** 0 is black, 1 is white. */
  readonly grey: number;
  /** Length of a dash and of a gap; absent: a whole line. */
  readonly dash?: readonly [number, number];
}

/** Lines and arcs of the plane, drawn, filled or both. */
export interface ContourItem {
  readonly kind: 'contour';
  /** With holes: rings that the even-odd rule leaves out of the fill. */
  readonly contours: readonly Contour[];
  readonly stroke?: Stroke;
  /** Grey of the fill: 0 is black, 1 is white. */
  readonly fill?: number;
}

/** One line of text. */
export interface TextItem {
  readonly kind: 'text';
  readonly text: string;
  /** On the base line. */
  readonly at: Point;
  /** Size of the font, mm; capitals are about 0.7 of it. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees counter-clockwise about `at`. */
  readonly angle: number;
  readonly bold: boolean;
  readonly grey: number;
  /** White behind it, so that it can be read on top of lines. */
  readonly halo: boolean;
}

/** A rectangle of the plane, mm. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/**
 * Items in coordinates of their own: a point p lands at `origin + scale * p`. Lines keep their width and
 * texts their size, so that a picture may be made smaller and stay legible.
 */
export interface GroupItem {
  readonly kind: 'group';
  readonly origin: Point;
  readonly scale: Point;
  /** In the group's own coordinates; nothing outside is seen. */
  readonly clip?: Box;
  readonly items: readonly PaperItem[];
}

export type PaperItem = ContourItem | TextItem | GroupItem;

/** A drawing in mm, x to the right and y up, before anything is known of paper. */
export interface PaperDrawing {
  /** What it takes up. */
  readonly frame: Box;
  readonly items: readonly PaperItem[];
  /** Words and what belongs to them. */
  readonly notes?: readonly Note[];
}

/** Words that want to be read on one page, and the place that they take up. */
export interface Note {
  readonly box: Box;
  readonly items: readonly PaperItem[];
}

/** One page; origin at its lower left corner. Sizes in mm. */
export interface PaperPage {
  /** What viewers show in the place of a page number. */
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly PaperItem[];
}

/** A whole document. */
export interface PaperDocument {
  readonly title: string;
  /** Language of its text: `en`. */
  readonly language: string;
  /** `YYYY-MM-DD`; absent: a fixed day, so that the same document gives the same bytes. */
  readonly date?: string;
  readonly pages: readonly PaperPage[];
}

/** Width in mm that a line of text takes at a size in mm. */
export type TextWidth = (text: string, size: number, bold?: boolean) => number;
