import type { Point } from '../../core/geometry/types.ts';
import { boxAbout, DIGIT, LINE, type Box } from './text-box.ts';

export type FigurePlace = 'left' | 'right' | 'above' | 'below';

/** Length in rem of the arrows that point at a small gap from outside. */
export const TAIL = 0.9;

/** The box on the screen that the figure of a small gap takes, the arrow on its side included. */
export function smallGapBox(from: Point, to: Point, figure: FigurePlace, text: string, rem: number): Box {
  const width = text.length * DIGIT * rem;
  const height = LINE * rem;
  const tail = (TAIL + 0.25) * rem;
  switch (figure) {
    case 'left':
      return {
        x: Math.min(from.x, to.x) - tail - width,
        y: from.y - height / 2,
        w: width + tail,
        h: height,
      };
    case 'right':
      return { x: Math.max(from.x, to.x), y: from.y - height / 2, w: width + tail, h: height };
    case 'above': {
      const top = Math.min(from.y, to.y) - tail - height;
      return { ...boxAbout({ x: from.x, y: 0 }, width, 0), y: top, h: height + tail };
    }
    default:
      return { ...boxAbout({ x: from.x, y: 0 }, width, 0), y: Math.max(from.y, to.y), h: height + tail };
  }
}
