import type { OverMark, SeatMark } from '../../core/scene/painted-seat.ts';
import type { Palette } from './palette.ts';

/** What a line of the picture is: part of a solid, or a mark. */
export type LineName = SeatMark | OverMark | 'edge' | 'ghost' | 'cut';

interface LineLook {
  readonly color: Exclude<keyof Palette, 'fill'>;
  /** Pixels. */
  readonly width: number;
}

const LOOKS: Readonly<Record<LineName, LineLook>> = {
  edge: { color: 'line', width: 1.5 },
  ghost: { color: 'faint', width: 1 },
  cut: { color: 'line', width: 2.5 },
  arrow: { color: 'left', width: 4 },
  'left edge': { color: 'left', width: 6 },
  contact: { color: 'contact', width: 4 },
  'contact line': { color: 'contact', width: 6 },
  'contact behind': { color: 'contact', width: 2 },
  dimension: { color: 'dimension', width: 2 },
  zone: { color: 'zone', width: 1.5 },
  tool: { color: 'left', width: 4 },
};

/** How a line is drawn, in space and flat: its colour, and its width in pixels. */
export function lineLook(
  name: LineName,
  palette: Palette,
): { readonly color: string; readonly width: number } {
  const { color, width } = LOOKS[name];
  return { color: palette[color], width };
}
