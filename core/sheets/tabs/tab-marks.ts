import { add, leftOf, scale } from '../../geometry/vector.ts';
import type { PathContour } from '../../geometry/types.ts';
import type { TabPlace, TabSettings } from './types.ts';

/** How far a mark reaches on either side of the outline, in widths of the cut, and at least in mm, to be seen. */
const REACH = { cuts: 1, least: 2 } as const;

/** Short lines across the outline, one at the middle of each tab; for a layer that is not cut. */
export const tabMarks = (places: readonly TabPlace[], { kerf }: TabSettings): readonly PathContour[] =>
  places.map(({ at, direction }) => {
    const across = scale(leftOf(direction), Math.max(REACH.least, REACH.cuts * kerf));
    const [start, end] = [add(at, scale(across, -1)), add(at, across)];
    return {
      kind: 'path',
      vertices: [
        { ...start, bulge: 0 },
        { ...end, bulge: 0 },
      ],
    };
  });
