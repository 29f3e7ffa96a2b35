import { formatLength } from '../units/format-length.ts';
import type { BuildContext } from './types.ts';

/** An overhang as the shop reads it: `1 7/16"`. */
export const overhangText = (overhang: number, context: BuildContext): string =>
  formatLength(overhang, context.unit);

/** What tells a jig for bevelled edges from its neighbour for square ones; nothing for square edges. */
export const bevelWords = (backBevel: number): readonly string[] =>
  backBevel === 0 ? [] : [`BACK BEVEL ${backBevel}°`];

/** What an edge is called on a jig. */
export const EDGE_WORDS = {
  bottom: 'BOTTOM EDGE',
  side: 'SIDE EDGE',
  corner: 'CORNER',
} as const;

/** In the back view the cabinet's left is to the right. */
export const CABINET_LEFT = '→ CABINET LEFT';
