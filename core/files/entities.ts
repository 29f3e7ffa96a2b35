import type { Contour, Point, Vertex } from '../geometry/types.ts';
import { OPERATIONS } from '../machine/operations.ts';
import type { Feature } from '../parts/types.ts';
import { INCH } from '../units/inch-fraction.ts';
import { arcsAsLines } from './arcs-as-lines.ts';
import type { Drawing, DxfSettings } from './drawing.ts';

/** What a DXF file draws, in the file's unit. */
export type DxfEntity =
  | { readonly kind: 'circle'; readonly layer: string; readonly center: Point; readonly radius: number }
  | {
      readonly kind: 'polyline';
      readonly layer: string;
      readonly closed: boolean;
      readonly vertices: readonly Vertex[];
    };

/** mm in one unit of the file. */
export const MM_PER_UNIT = { mm: 1, in: INCH } as const;

/** Features in the order in which they should run: text first, the outline last. */
const inRunningOrder = (features: readonly Feature[]): readonly Feature[] =>
  OPERATIONS.flatMap((operation) => features.filter((feature) => feature.operation === operation));

/** One entity for each contour, with the switches of the machine profile applied (requirement DXF-4). */
export function entitiesOf(drawing: Drawing, settings: DxfSettings): readonly DxfEntity[] {
  const scale = 1 / MM_PER_UNIT[settings.unit];
  return inRunningOrder(drawing.features).map(({ operation, contour }): DxfEntity => {
    const layer = drawing.layers[operation].name;
    const drawn = settings.arcsAsLines ? arcsAsLines(contour) : contour;
    if (drawn.kind === 'circle') {
      const { center, radius } = drawn;
      return {
        kind: 'circle',
        layer,
        center: { x: center.x * scale, y: center.y * scale },
        radius: radius * scale,
      };
    }
    const closed = drawn.kind === 'ring';
    const vertices = drawn.vertices.map(({ x, y, bulge }) => ({ x: x * scale, y: y * scale, bulge }));
    const [first] = vertices;
    const repeats = closed && settings.repeatFirstPoint && first !== undefined;
    return {
      kind: 'polyline',
      layer,
      closed,
      vertices: repeats ? [...vertices, { ...first, bulge: 0 }] : vertices,
    };
  });
}

/** The contour of an entity, in the file's unit. */
export const contourOf = (entity: DxfEntity): Contour =>
  entity.kind === 'circle'
    ? { kind: 'circle', center: entity.center, radius: entity.radius }
    : { kind: entity.closed ? 'ring' : 'path', vertices: entity.vertices };
