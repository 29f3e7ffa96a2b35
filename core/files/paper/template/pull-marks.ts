import type { Fastening } from '../../../fastening/types.ts';
import { circle, cross } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem } from '../page/types.ts';

/** The holes of the pull at their true size, each with a cross. */
export const pullMarks = ({ pullHoles: { centers, diameter } }: Fastening): readonly PaperItem[] =>
  centers.flatMap((center) => [
    circle(center, diameter / 2, STROKES.thin),
    ...cross(center, diameter / 2 + 2.5, STROKES.thin),
  ]);

export const pullBoxes = ({ pullHoles: { centers, diameter } }: Fastening): readonly Box[] =>
  centers.map(({ x, y }) => {
    const reach = diameter / 2 + 4;
    return { x: x - reach, y: y - reach, w: 2 * reach, h: 2 * reach };
  });
