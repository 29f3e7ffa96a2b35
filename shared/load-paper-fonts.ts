import type { PaperFonts } from '../core/files/paper/pdf/fonts.ts';

/** The fonts of printed sheets, loaded when something is printed. */
export const loadPaperFonts = async (): Promise<PaperFonts> => (await import('./paper-fonts.ts')).PAPER_FONTS;
