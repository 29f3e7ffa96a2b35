import makerjs from 'makerjs';
import type { Outcome } from '../findings/finding.ts';
import type { LengthUnit } from '../order/types.ts';
import type { Operation } from '../machine/operations.ts';
import type { Drawing, ExportReport } from './drawing.ts';
import { makerModel } from './makerjs-model.ts';
import { prepareDrawing } from './prepare.ts';

/**
 * What an export says of itself (requirement EXP), in mm whatever the file's unit; null when the drawing can't be
 * written. Measured on the makerjs model of what is left to draw, independently of the writers.
 */
export function exportReport(drawing: Drawing, unit: LengthUnit): Outcome<ExportReport | null> {
  const { drawing: ready, duplicatesRemoved, findings } = prepareDrawing(drawing);
  const model = ready === null ? null : makerModel(ready).value;
  if (ready === null || model === null) return { value: null, findings };
  const ofOperation = (operation: Operation): number => {
    const own = model.models?.[operation];
    return own === undefined ? 0 : lengthOf(own);
  };
  const engraveLength = ofOperation('engrave');
  const open = ready.features.filter(
    ({ operation, contour }) => operation !== 'engrave' && operation !== 'tab' && contour.kind === 'path',
  );
  return {
    value: {
      unit,
      entities: ready.features.length,
      cutLength: lengthOf(model) - engraveLength - ofOperation('tab'),
      engraveLength,
      openContoursOnCutLayers: open.length,
      duplicatesRemoved,
      extents: extentsOf(model),
    },
    findings,
  };
}

const lengthOf = (model: makerjs.IModel): number => makerjs.measure.modelPathLength(model);

function extentsOf(model: makerjs.IModel): ExportReport['extents'] {
  const extents = makerjs.measure.modelExtents(model);
  if (extents === null) throw new TypeError('exportReport: a checked drawing has extents');
  const { low, high } = extents;
  return { minX: low[0] ?? NaN, minY: low[1] ?? NaN, maxX: high[0] ?? NaN, maxY: high[1] ?? NaN };
}
