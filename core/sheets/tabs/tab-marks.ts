import { add, leftOf, scale } from '../../geometry/vector.ts';
import type { PathContour } from '../../geometry/types.ts';
import type { TabPlace, TabSettings } from './types.ts';

/** Short lines across the outline, one at the middle of each tab; for a layer that is not cut. */
export const tabMarks = (places: readonly TabPlace[], { reach }: TabSettings): readonly PathContour[] =>
  places.map(({ at, direction }) => {
    const across = scale(leftOf(direction), reach);
    const [start, end] = [add(at, scale(across, -1)), add(at, across)];
    return {
      kind: 'path',
      vertices: [
        { ...start, bulge: 0 },
        { ...end, bulge: 0 },
      ],
    };
  });
