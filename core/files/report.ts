import makerjs from 'makerjs';
import type { Outcome } from '../findings/finding.ts';
import type { LengthUnit } from '../order/types.ts';
import type { Operation } from '../machine/operations.ts';
import type { Drawing, ExportReport } from './drawing.ts';
import { makerPaths } from './makerjs-model.ts';
import { prepareDrawing } from './prepare.ts';

type Measured = Omit<ExportReport, 'unit'>;

/** A drawing is measured once, however many files are made of it. */
const known = new WeakMap<Drawing, Measured>();

/**
 * What an export says of itself (requirement EXP), in mm whatever the file's unit; null when the drawing can't be
 * written. Measured by makerjs on what is left to draw, independently of the writers.
 */
export function exportReport(drawing: Drawing, unit: LengthUnit): Outcome<ExportReport | null> {
  const { drawing: ready, duplicatesRemoved, findings } = prepareDrawing(drawing);
  if (ready === null) return { value: null, findings };
  const measured = known.get(drawing) ?? measure(ready, duplicatesRemoved);
  known.set(drawing, measured);
  return { value: { unit, ...measured }, findings };
}

function measure({ features }: Drawing, duplicatesRemoved: number): Measured {
  const lengths: Partial<Record<Operation, number>> = {};
  const extents = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const { operation, contour } of features) {
    for (const path of makerPaths(contour)) {
      lengths[operation] = (lengths[operation] ?? 0) + makerjs.measure.pathLength(path);
      const { low, high } = makerjs.measure.pathExtents(path);
      extents.minX = Math.min(extents.minX, low[0] ?? NaN);
      extents.minY = Math.min(extents.minY, low[1] ?? NaN);
      extents.maxX = Math.max(extents.maxX, high[0] ?? NaN);
      extents.maxY = Math.max(extents.maxY, high[1] ?? NaN);
    }
  }
  const { engrave = 0, tab: _tab, ...cut } = lengths;
  const open = features.filter(
    ({ operation, contour }) => operation !== 'engrave' && operation !== 'tab' && contour.kind === 'path',
  );
  return {
    entities: features.length,
    cutLength: Object.values(cut).reduce((sum, length) => sum + length, 0),
    engraveLength: engrave,
    openContoursOnCutLayers: open.length,
    duplicatesRemoved,
    extents,
  };
}
