import { EDGES, type Edge } from '../../../order/types.ts';
import { point, text } from '../page/draw.ts';
import type { Box, Note, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import { findRoom } from './find-place.ts';

/** Shares of an edge at which its words may stand, the best first. */
const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7] as const;

/** What to do with the strips, on each of them, along its edge. @param back where the paper folds */
export const foldNotes = (
  back: Box,
  strip: number,
  rooms: readonly Box[],
  words: PaperWords,
  measure: TextWidth,
): readonly Note[] => {
  const size = Math.min(3.2, strip * 0.45);
  const long = measure(words.template.fold, size);
  return EDGES.flatMap((edge): readonly Note[] => {
    const upright = edge === 'left' || edge === 'right';
    // The mitres take a strip's width off both ends.
    if (long > (upright ? back.h : back.w) - strip) return [];
    const candidates = SHARES.map((share) => stripBox(edge, share, back, strip, { long, size }));
    const box = findRoom(candidates, [], rooms) ?? candidates[0];
    if (box === undefined) return [];
    const at = upright
      ? point(box.x + box.w - size * 0.15, box.y + long / 2)
      : point(box.x + long / 2, box.y + size * 0.15);
    return [
      { box, items: [text(words.template.fold, at, size, { anchor: 'middle', angle: upright ? 90 : 0 })] },
    ];
  });
};

/** The middle of a strip. The cabinet's left is at the right of the back view. */
function stripBox(
  edge: Edge,
  share: number,
  { x, y, w, h }: Box,
  strip: number,
  { long, size }: { readonly long: number; readonly size: number },
): Box {
  const off = (strip - size) / 2;
  const [alongX, alongY] = [x + w * share - long / 2, y + h * share - long / 2];
  return {
    bottom: { x: alongX, y: y - strip + off, w: long, h: size },
    top: { x: alongX, y: y + h + off, w: long, h: size },
    right: { x: x - strip + off, y: alongY, w: size, h: long },
    left: { x: x + w + off, y: alongY, w: size, h: long },
  }[edge];
}
