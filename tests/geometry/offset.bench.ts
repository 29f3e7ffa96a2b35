import { bench, describe } from 'vitest';
import { difference } from '../../core/geometry/boolean.ts';
import { offsetContour } from '../../core/geometry/offset.ts';
import { combOf648, plateOf40, tenHoles, twentySlots } from './workpieces.ts';

// Limits of requirement OFF-3, medians of 20 on two cores: 25, 10 and 250 ms.
const twenty = { iterations: 20, time: 0, warmupIterations: 60, warmupTime: 0 };

describe('OFF-3', () => {
  const [plate, comb] = [plateOf40(), combOf648()];
  bench(
    'offset of a 40-segment plate with 10 round holes, 25 ms or less',
    () => {
      for (const contour of [plate, ...tenHoles]) offsetContour(contour, contour.kind === 'ring' ? 1 : -1);
    },
    twenty,
  );
  bench(
    'difference of that plate and 20 slots, 10 ms or less',
    () => {
      difference([plate, ...tenHoles], twentySlots);
    },
    twenty,
  );
  bench(
    'offset of a 648-segment comb, 250 ms or less',
    () => {
      offsetContour(comb, 1);
    },
    twenty,
  );
});
