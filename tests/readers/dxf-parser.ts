import Parser from 'dxf-parser';
import { z } from 'zod';
import type { ReadDxf, ReadEntity } from './types.ts';

const corner = z.object({ x: z.number(), y: z.number() });

const entity = z.object({
  type: z.string(),
  layer: z.string(),
  shape: z.boolean().default(false),
  vertices: z.array(corner.extend({ bulge: z.number().default(0) })).default([]),
  center: corner.optional(),
  radius: z.number().default(Number.NaN),
});

const parsed = z.object({
  header: z.object({ $EXTMIN: corner, $EXTMAX: corner, $INSUNITS: z.number(), $MEASUREMENT: z.number() }),
  tables: z.object({
    layer: z.object({ layers: z.record(z.string(), z.object({ colorIndex: z.number() })) }),
  }),
  entities: z.array(entity),
});

/** Reads a DXF text with the npm package dxf-parser. */
export function readWithDxfParser(text: string): ReadDxf {
  const { header, tables, entities } = parsed.parse(new Parser().parseSync(text));
  const layers = Object.entries(tables.layer.layers);
  const [low, high] = [header.$EXTMIN, header.$EXTMAX];
  return {
    layers: Object.fromEntries(layers.map(([name, { colorIndex }]) => [name, colorIndex])),
    entities: entities.map(describe),
    insunits: header.$INSUNITS,
    measurement: header.$MEASUREMENT,
    extents: [low.x, low.y, high.x, high.y],
  };
}

const describe = ({ type, layer, shape, vertices, center, radius }: z.infer<typeof entity>): ReadEntity => ({
  type,
  layer,
  closed: type === 'CIRCLE' || shape,
  vertices: vertices.map(({ x, y, bulge }) => [x, y, bulge] as const),
  circle: center === undefined ? null : [center.x, center.y, radius],
});
