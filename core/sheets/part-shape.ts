import { bounds, signedArea } from '../geometry/measure.ts';
import { largestNotch, type Notch } from '../geometry/notch.ts';
import type { ClosedContour, Point } from '../geometry/types.ts';
import type { Part } from '../parts/types.ts';
import type { Rect } from './packer/rect.ts';

/** What the packer knows of a part, mm. */
export interface PartShape {
  readonly part: Part;
  /** Of the box of all its features, as drawn. */
  readonly corner: Point;
  readonly width: number;
  readonly height: number;
  /** What it takes of its box, from the box's corner: all, or, of an L, its two arms. */
  readonly cover: readonly Rect[];
  /** mm², of the finished part's outline. */
  readonly area: number;
}

/** Share of the box. A smaller notch would save nothing worth a more broken layout. */
const SMALLEST_NOTCH = 0.08;

/** The box of a part and what it takes of it; pockets that run out past the outline count. */
export function partShape(part: Part): PartShape {
  const { min, max } = bounds(...part.features.map(({ contour }) => contour));
  const [width, height] = [max.x - min.x, max.y - min.y];
  const solid = part.features.flatMap(({ operation, contour }) =>
    contour.kind === 'path' || operation === 'engrave' ? [] : [contour],
  );
  const outlines = part.features.flatMap(({ operation, contour }): readonly ClosedContour[] =>
    operation === 'cut-outer' && contour.kind !== 'path' ? [contour] : [],
  );
  const area = outlines.reduce((sum, outline) => sum + Math.abs(signedArea(outline)), 0);
  return { part, corner: min, width, height, cover: coverOf(solid, width, height), area };
}

function coverOf(solid: readonly ClosedContour[], width: number, height: number): readonly Rect[] {
  const whole = [{ x: 0, y: 0, width, height }];
  if (solid.length === 0) return whole;
  const { min, max } = bounds(...solid);
  const notch = largestNotch(...solid);
  const sameBox = max.x - min.x === width && max.y - min.y === height;
  if (notch === null || !sameBox || notch.width * notch.height < SMALLEST_NOTCH * width * height) {
    return whole;
  }
  return arms(notch, width, height);
}

/** The two rectangles that a notch leaves of a box: one as wide as the box, and one beside the notch. */
function arms(notch: Notch, width: number, height: number): readonly Rect[] {
  const low = notch.corner.startsWith('bottom');
  const left = notch.corner.endsWith('left');
  return [
    { x: 0, y: low ? notch.height : 0, width, height: height - notch.height },
    {
      x: left ? notch.width : 0,
      y: low ? 0 : height - notch.height,
      width: width - notch.width,
      height: notch.height,
    },
  ];
}
