import type { Fastening } from '../../../fastening/types.ts';
import { arrow, circle, cross } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem } from '../page/types.ts';
import { screwPoints, type ScrewPoints } from './screw-points.ts';

/** mm. Arms of the cross, the circle of a head whose size is not known, and the arrow of a leaning screw. */
export const SCREW_MARK = { arm: 4, head: 3.5, ahead: 10, arrowHead: 2.2 } as const;

/**
 * A cross where the screw comes to the back of the front, a circle where its head is on the inside of the box
 * front, and for a leaning screw an arrow from the head the way that the tip goes.
 */
export function screwMarks({ places, fit, screw }: Fastening): readonly PaperItem[] {
  const radius = screw === null ? SCREW_MARK.head : screw.headDiameter.value / 2;
  return places.flatMap((place) => {
    const points = screwPoints(place, fit.boxFront);
    return [
      ...cross(points.crossing, SCREW_MARK.arm),
      circle(points.head, radius, STROKES.thin),
      ...leanArrow(points),
    ];
  });
}

function leanArrow({ head, crossing }: ScrewPoints): readonly PaperItem[] {
  const [dx, dy] = [crossing.x - head.x, crossing.y - head.y];
  const off = Math.hypot(dx, dy);
  if (off < 0.01) return [];
  const by = (off + SCREW_MARK.ahead) / off;
  return arrow(head, { x: head.x + dx * by, y: head.y + dy * by }, SCREW_MARK.arrowHead, STROKES.thin);
}

/** What the marks of a drawer's screws take up, for words to stay off. */
export const screwBoxes = ({ places, fit }: Fastening): readonly Box[] =>
  places.map((place) => {
    const { crossing } = screwPoints(place, fit.boxFront);
    const reach = 2 * SCREW_MARK.arm;
    return { x: crossing.x - reach, y: crossing.y - reach, w: 2 * reach, h: 2 * reach };
  });
