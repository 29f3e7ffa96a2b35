/** Which way the strokes of a hatch run, and how close: pixels from stroke to stroke. */
export interface Hatch {
  readonly way: 'rising' | 'falling' | 'level';
  readonly every: number;
  readonly stroke: number;
}
