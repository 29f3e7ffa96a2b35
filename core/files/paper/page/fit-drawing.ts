import type { Box, GroupItem, PaperDrawing } from './types.ts';

/** A drawing made as large as a box allows, in its middle; larger than `most` times its size it never gets. */
export function fitDrawing({ frame, items }: PaperDrawing, into: Box, most = Infinity): GroupItem {
  const by = Math.min(into.w / frame.w, into.h / frame.h, most);
  return {
    kind: 'group',
    origin: {
      x: into.x + (into.w - frame.w * by) / 2 - frame.x * by,
      y: into.y + (into.h - frame.h * by) / 2 - frame.y * by,
    },
    scale: { x: by, y: by },
    items,
  };
}
