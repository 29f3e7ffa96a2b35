/** A point of the plane, in millimetres. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A corner of a ring or path and the segment that leaves it.
 * `bulge` is tan(included angle / 4) as DXF defines it: 0 is a straight line, positive turns
 * counter-clockwise, 1 is a half circle. Never beyond ±1: a larger arc is two segments.
 */
export interface Vertex extends Point {
  readonly bulge: number;
}

/** A closed outline of lines and arcs; the last vertex's segment returns to the first. Not repeated. */
export interface RingContour {
  readonly kind: 'ring';
  readonly vertices: readonly Vertex[];
}

/** A whole circle; stays a circle in every file. */
export interface CircleContour {
  readonly kind: 'circle';
  readonly center: Point;
  readonly radius: number;
}

/** An open line of segments, for engraving; the last vertex's bulge is 0 and means nothing. */
export interface PathContour {
  readonly kind: 'path';
  readonly vertices: readonly Vertex[];
}

export type ClosedContour = RingContour | CircleContour;
export type Contour = ClosedContour | PathContour;
