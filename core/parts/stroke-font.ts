/** A glyph of single strokes in font units: baseline at y 0, y up, x from the left of its advance. */
export interface StrokeGlyph {
  readonly advance: number;
  /** Open polylines; each a list of [x, y]. */
  readonly strokes: readonly (readonly (readonly [number, number])[])[];
}

/** A stroke font as data, `assets/stroke-font/*.json`. */
export interface StrokeFont {
  readonly name: string;
  /** Height of a capital H in font units. */
  readonly capHeight: number;
  readonly glyphs: Readonly<Record<string, StrokeGlyph>>;
}
