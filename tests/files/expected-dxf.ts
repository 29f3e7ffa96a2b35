import type { Drawing, DxfSettings } from '../../core/files/drawing.ts';
import { OPERATIONS } from '../../core/machine/operations.ts';
import type { ReadDxf } from '../readers/types.ts';

/** 25.4 mm is an inch by definition. */
const MM = { mm: 1, in: 25.4 };

/**
 * What a reader must see of a drawing without duplicates, with arcs as arcs and no first point repeated: made from
 * the drawing alone, with nothing of the writer's.
 */
export function expectedDxf(drawing: Drawing, settings: DxfSettings): Pick<ReadDxf, 'entities' | 'layers'> {
  const scale = MM[settings.unit];
  const polyline = settings.version === 'R12' ? 'POLYLINE' : 'LWPOLYLINE';
  const used = OPERATIONS.filter((operation) => drawing.features.some((f) => f.operation === operation));
  const entities = used.flatMap((operation) =>
    drawing.features
      .filter((feature) => feature.operation === operation)
      .map(({ contour }) => {
        const layer = drawing.layers[operation].name;
        if (contour.kind === 'circle') {
          const { center, radius } = contour;
          const circle = [center.x / scale, center.y / scale, radius / scale] as const;
          return { type: 'CIRCLE', layer, closed: true, vertices: [], circle };
        }
        const vertices = contour.vertices.map(({ x, y, bulge }) => [x / scale, y / scale, bulge] as const);
        return { type: polyline, layer, closed: contour.kind === 'ring', vertices, circle: null };
      }),
  );
  const layers = used.map((operation) => [
    drawing.layers[operation].name,
    drawing.layers[operation].colorIndex,
  ]);
  return { entities, layers: { '0': 7, ...Object.fromEntries(layers) } };
}
