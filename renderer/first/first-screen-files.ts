import type { Tokens } from '../seat/tokens.ts';
import type { ThemeName } from '../store/types.ts';

export interface FirstScreen {
  /** HTML; its picture is in files of its own (`firstFile`). */
  readonly html: string;
  /** The picture in each theme, as an SVG document. */
  readonly pictures: Readonly<Record<ThemeName, string>>;
}

/** Draws the first screen, in these colours. */
export type DrawFirstScreen = (tokens: Readonly<Record<ThemeName, Tokens>>) => Promise<FirstScreen>;

/** The name of the first screen's picture in a theme, for screens of so many dots to a pixel. */
export const firstFile = (theme: ThemeName, dots: number): string => `first-seat-${theme}-${dots}.png`;
