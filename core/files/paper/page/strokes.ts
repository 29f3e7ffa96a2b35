import type { Stroke } from './types.ts';

/** The lines of all drawings on paper; widths in mm. A laser or ink printer holds 0.15 mm; common practice, no source. */
export const STROKES = {
  /** Cut the paper here. */
  cut: { width: 0.35, grey: 0 },
  /** Fold the paper here. */
  fold: { width: 0.25, grey: 0, dash: [4, 2] },
  /** What something is set against. */
  strong: { width: 0.5, grey: 0 },
  thin: { width: 0.18, grey: 0 },
  /** Hidden behind something. */
  hidden: { width: 0.18, grey: 0.35, dash: [2, 1.2] },
  faint: { width: 0.15, grey: 0.55 },
  rule: { width: 0.2, grey: 0.6 },
} as const satisfies Readonly<Record<string, Stroke>>;
