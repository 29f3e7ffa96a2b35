import type { Outcome } from '../findings/finding.ts';
import { bounds, type Bounds } from '../geometry/measure.ts';
import { OPERATIONS } from '../machine/operations.ts';
import type { LengthUnit } from '../order/types.ts';
import type { Drawing, DxfSettings } from './drawing.ts';
import { r12 } from './dxf-r12.ts';
import { r2000 } from './dxf-r2000.ts';
import { fileText } from './dxf-tags.ts';
import { contourOf, entitiesOf, MM_PER_UNIT } from './entities.ts';
import { prepareDrawing } from './prepare.ts';

/**
 * The text of a DXF file in the version and unit of the machine profile; lengths of the drawing are mm.
 * With an error among the findings the text is empty: a file that can't be right isn't written.
 */
export function writeDxf(drawing: Drawing, settings: DxfSettings): Outcome<string> {
  const { drawing: ready, findings } = prepareDrawing(drawing);
  if (ready === null) return { value: '', findings };
  const entities = entitiesOf(ready, settings);
  const layers = OPERATIONS.filter((operation) => ready.features.some((f) => f.operation === operation)).map(
    (operation) => ready.layers[operation],
  );
  const extents = settings.arcsAsLines
    ? bounds(...entities.map(contourOf))
    : inUnit(ready.extents, settings.unit);
  const write = settings.version === 'R12' ? r12 : r2000;
  return { value: fileText(write(entities, layers, settings.unit, extents)), findings };
}

function inUnit({ min, max }: Bounds, unit: LengthUnit): Bounds {
  const scale = 1 / MM_PER_UNIT[unit];
  return {
    min: { x: min.x * scale, y: min.y * scale },
    max: { x: max.x * scale, y: max.y * scale },
  };
}
