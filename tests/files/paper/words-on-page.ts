import type { ReadPage, ReadText } from './read-pdfjs.ts';

type Box = ReadText['box'];

/** All that a page says. */
export const wordsOf = ({ texts }: ReadPage): string => texts.map(({ text }) => text).join(' ');

/** mm by which a box stands out past the margins of a page; 0 or less where it does not. */
export const leaves = ({ x, y, w, h }: Box, page: ReadPage, margin: number): number =>
  Math.max(margin - x, margin - y, x + w - (page.width - margin), y + h - (page.height - margin));

/** Pairs of texts of a page that lie on one another by more than a tenth of a millimetre. */
export function collisions({ texts }: ReadPage): readonly string[] {
  const meet = (a: Box, b: Box) =>
    Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x) > 0.1 &&
    Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y) > 0.1;
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .flatMap((other) => (meet(one.box, other.box) ? [`${one.text} | ${other.text}`] : [])),
  );
}
