/** The two fonts of every sheet, as the bytes of TTF, OTF or WOFF files. */
export interface PaperFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export const REGULAR = 'regular';
export const BOLD = 'bold';
