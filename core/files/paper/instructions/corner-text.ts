import type { Corner } from '../../../fastening/types.ts';
import type { PaperWords } from '../words/en.ts';

/** A corner of the box in words: `bottom cabinet left`. */
export const cornerText = ({ end, hand }: Corner, words: PaperWords): string =>
  words.sheets.corner(words.edges[end], words.edges[hand]);
