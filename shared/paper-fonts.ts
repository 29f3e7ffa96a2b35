import bold from '@expo-google-fonts/ibm-plex-sans/600SemiBold/IBMPlexSans_600SemiBold.ttf?inline';
import regular from '@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf?inline';
import type { PaperFonts } from '../core/files/paper/pdf/fonts.ts';

/** The fonts of printed sheets, built into the program; SIL Open Font License 1.1. */
export const PAPER_FONTS: PaperFonts = { regular: bytesOf(regular), bold: bytesOf(bold) };

/** The bytes of a `data:` address in base64. */
function bytesOf(address: string): Uint8Array {
  const [, text = ''] = address.split(',', 2);
  return Uint8Array.from(atob(text), (char) => char.codePointAt(0) ?? 0);
}
