import sans from '../assets/stroke-font/sans.json';
import type { PaperFonts } from '../core/files/paper/pdf/fonts.ts';
import { parseStrokeFont } from '../core/parts/parse-stroke-font.ts';
import type { StrokeFont } from '../core/parts/stroke-font.ts';

/** The fonts of printed sheets, loaded when something is printed. */
export const loadPaperFonts = async (): Promise<PaperFonts> => (await import('./paper-fonts.ts')).PAPER_FONTS;

/** The font of engraved text. */
export const STROKE_FONT: StrokeFont = parseStrokeFont(sans);
