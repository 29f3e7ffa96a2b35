import { pageOf, pathData } from '../../core/files/svg-path.ts';
import type { Contour } from '../../core/geometry/types.ts';
import type { Operation } from '../../core/machine/operations.ts';
import type { Feature } from '../../core/parts/types.ts';

/** The part's origin stays at 0, 0; only y is turned down, as a page has it. */
const toPage = pageOf(0, 0);

/** All contours of one operation as one SVG path in mm, y down. */
export const operationPath = (features: readonly Feature[], operation: Operation): string =>
  features
    .filter((feature) => feature.operation === operation)
    .map(({ contour }) => contourPath(contour))
    .join(' ');

function contourPath(contour: Contour): string {
  if (contour.kind !== 'circle') return pathData(contour, toPage);
  const { x, y } = toPage(contour.center);
  const { radius } = contour;
  const half = `a ${radius} ${radius} 0 1 0`;
  return `M ${x - radius} ${y} ${half} ${2 * radius} 0 ${half} ${-2 * radius} 0 Z`;
}
