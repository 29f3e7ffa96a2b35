import { parseString } from 'dxf';
import { z } from 'zod';
import type { ReadDxf, ReadEntity } from './types.ts';

const corner = z.object({ x: z.number(), y: z.number() });

const entity = z.object({
  type: z.string(),
  layer: z.string(),
  closed: z.boolean().default(false),
  vertices: z.array(corner.extend({ bulge: z.number().default(0) })).default([]),
  x: z.number().optional(),
  y: z.number().optional(),
  r: z.number().optional(),
});

const parsed = z.object({
  header: z.object({ extMin: corner, extMax: corner, insUnits: z.number(), measurement: z.number() }),
  tables: z.object({ layers: z.record(z.string(), z.object({ colorNumber: z.number() })) }),
  entities: z.array(entity),
});

/** Reads a DXF text with the npm package dxf. */
export function readWithDxfPackage(text: string): ReadDxf {
  const { header, tables, entities } = parsed.parse(parseString(text));
  const layers = Object.entries(tables.layers);
  return {
    layers: Object.fromEntries(layers.map(([name, { colorNumber }]) => [name, colorNumber])),
    entities: entities.map(describe),
    insunits: header.insUnits,
    measurement: header.measurement,
    extents: [header.extMin.x, header.extMin.y, header.extMax.x, header.extMax.y],
  };
}

function describe({ type, layer, closed, vertices, x, y, r }: z.infer<typeof entity>): ReadEntity {
  const circle = x === undefined || y === undefined || r === undefined ? null : ([x, y, r] as const);
  return {
    type,
    layer,
    closed: type === 'CIRCLE' || closed,
    vertices: vertices.map((vertex) => [vertex.x, vertex.y, vertex.bulge] as const),
    circle,
  };
}
