import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { Contour } from '../geometry/types.ts';
import { contourProblems } from '../geometry/validate.ts';
import type { Feature } from '../parts/types.ts';
import { checkLayers } from './check-layers.ts';
import type { Drawing } from './drawing.ts';

/** mm. No sheet is larger: a coordinate beyond a kilometre is a mistake, and would lose decimals. */
const FARTHEST = 1e6;

/** Everything that makes a drawing unfit to be written; the writers refuse while there is any. */
export function checkDrawing(drawing: Drawing): readonly Finding[] {
  if (drawing.features.length === 0) {
    return [error('files/nothing', 'There is nothing to draw in this file.')];
  }
  return [
    ...checkLayers(drawing),
    ...drawing.features.flatMap((feature, index) =>
      checkFeature(feature, index, drawing.openOutlines ?? false),
    ),
  ];
}

function checkFeature(
  { operation, contour }: Feature,
  index: number,
  openOutlines: boolean,
): readonly Finding[] {
  const at = { field: `features.${index}` };
  const name = `Contour ${index + 1} (${operation})`;
  const findings = [...contourProblems(contour), ...farOff(contour)].map((problem) =>
    error('files/geometry', `${name} can't be written: ${problem}.`, at, { index, operation, problem }),
  );
  // An open cut leaves the part in the sheet, and a machine can't tell its inside from its outside.
  const mayBeOpen =
    operation === 'engrave' || operation === 'tab' || (operation === 'cut-outer' && openOutlines);
  const open = contour.kind === 'path' && !mayBeOpen;
  if (!open) return findings;
  const message = `${name} is open; only engraving and tabs may be.`;
  return [...findings, error('files/open-contour', message, at, { index, operation })];
}

function farOff(contour: Contour): readonly string[] {
  const points = contour.kind === 'circle' ? [contour.center] : contour.vertices;
  const far = points.some(({ x, y }) => Math.max(Math.abs(x), Math.abs(y)) > FARTHEST);
  const large = contour.kind === 'circle' && contour.radius > FARTHEST;
  return far || large ? ['it has a coordinate or radius beyond 1 km'] : [];
}
