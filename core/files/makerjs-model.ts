import makerjs from 'makerjs';
import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { segmentsOf, type Segment } from '../geometry/segments.ts';
import type { Contour } from '../geometry/types.ts';
import { OPERATIONS, type Operation } from '../machine/operations.ts';
import { checkDrawing } from './check-drawing.ts';
import type { Drawing } from './drawing.ts';

export type MakerModel = makerjs.IModel;

/**
 * The drawing as a makerjs model in mm: one model for each operation, its layer named by the operation, with a
 * model for each contour. makerjs changes what it is given and takes NaN as it comes; hence the drawing is
 * checked first and nothing of it is shared with the model.
 */
export function makerModel(drawing: Drawing): Outcome<MakerModel | null> {
  const findings: readonly Finding[] = checkDrawing(drawing);
  if (hasErrors(findings)) return { value: null, findings };
  const models: Record<string, MakerModel> = {};
  for (const operation of OPERATIONS) {
    const drawn = drawing.features.filter((feature) => feature.operation === operation);
    if (drawn.length > 0)
      models[operation] = operationModel(
        operation,
        drawn.map(({ contour }) => contour),
      );
  }
  return { value: { units: makerjs.unitType.Millimeter, models }, findings };
}

const operationModel = (operation: Operation, contours: readonly Contour[]): MakerModel => ({
  layer: operation,
  models: Object.fromEntries(contours.map((contour, index) => [`contour${index}`, contourModel(contour)])),
});

const contourModel = (contour: Contour): MakerModel => ({
  paths: Object.fromEntries(
    makerPaths(contour).map((drawn, index) => [
      contour.kind === 'circle' ? 'circle' : `segment${index}`,
      drawn,
    ]),
  ),
});

/** The lines, arcs and circles of a checked contour, as makerjs has them; mm. */
export function makerPaths(contour: Contour): readonly makerjs.IPath[] {
  if (contour.kind !== 'circle') return segmentsOf(contour).map(path);
  const { center, radius } = contour;
  return [new makerjs.paths.Circle([center.x, center.y], radius)];
}

/** makerjs draws every arc counter-clockwise, from the start angle to the end angle in degrees. */
function path(segment: Segment): makerjs.IPath {
  const { start, end } = segment;
  if (segment.kind === 'line') return new makerjs.paths.Line([start.x, start.y], [end.x, end.y]);
  const { center, radius, startAngle, sweep } = segment;
  const [from, to] = sweep > 0 ? [startAngle, startAngle + sweep] : [startAngle + sweep, startAngle];
  const degrees = 180 / Math.PI;
  return new makerjs.paths.Arc([center.x, center.y], radius, from * degrees, to * degrees);
}
