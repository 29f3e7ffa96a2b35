import type { Bounds } from '../geometry/measure.ts';
import type { LengthUnit } from '../order/types.ts';
import type { LayerStyle } from '../machine/profile.ts';
import { header, variable } from './dxf-header.ts';
import { entityHandle, HANDLE } from './dxf-r2000-handles.ts';
import { blocks, objects } from './dxf-r2000-objects.ts';
import { tables } from './dxf-r2000-tables.ts';
import { point, real, section, text, whole, type Tag } from './dxf-tags.ts';
import type { DxfEntity } from './entities.ts';
import { bulgeNumber } from './numbers.ts';

/** The groups of a full R2000 file (AC1015): LWPOLYLINE and CIRCLE, each with a handle of its own. */
export const r2000 = (
  entities: readonly DxfEntity[],
  layers: readonly LayerStyle[],
  unit: LengthUnit,
  extents: Bounds,
): readonly Tag[] => [
  ...header('R2000', unit, extents, variable('$HANDSEED', [text(5, entityHandle(entities.length))])),
  ...section('CLASSES', []),
  ...tables(layers, extents),
  ...blocks,
  ...section('ENTITIES', entities.flatMap(entity)),
  ...objects(extents),
  text(0, 'EOF'),
];

function entity(drawn: DxfEntity, index: number): readonly Tag[] {
  const head = (type: string, subclass: string): readonly Tag[] => [
    text(0, type),
    text(5, entityHandle(index)),
    text(330, HANDLE.modelRecord),
    text(100, 'AcDbEntity'),
    text(8, drawn.layer),
    text(100, subclass),
  ];
  if (drawn.kind === 'circle') {
    return [...head('CIRCLE', 'AcDbCircle'), ...point(10, drawn.center), real(40, drawn.radius)];
  }
  return [
    ...head('LWPOLYLINE', 'AcDbPolyline'),
    whole(90, drawn.vertices.length),
    whole(70, drawn.closed ? 1 : 0),
    ...drawn.vertices.flatMap(({ x, y, bulge }) => [
      real(10, x),
      real(20, y),
      ...(bulge === 0 ? [] : [text(42, bulgeNumber(bulge))]),
    ]),
  ];
}
