import { readFileSync } from 'node:fs';
import type { PaperFonts } from '../../../core/files/paper/pdf/fonts.ts';

const bytes = (path: string): Uint8Array =>
  readFileSync(new URL(`../../../node_modules/@expo-google-fonts/ibm-plex-sans/${path}`, import.meta.url));

/** The fonts as whoever calls the writer reads them. */
export const PAPER_FONTS: PaperFonts = {
  regular: bytes('400Regular/IBMPlexSans_400Regular.ttf'),
  bold: bytes('600SemiBold/IBMPlexSans_600SemiBold.ttf'),
};
