import type { Bounds } from '../geometry/measure.ts';
import type { Vertex } from '../geometry/types.ts';
import type { LengthUnit } from '../order/types.ts';
import type { LayerStyle } from '../machine/profile.ts';
import { header } from './dxf-header.ts';
import { point, real, section, text, whole, type Tag } from './dxf-tags.ts';
import type { DxfEntity } from './entities.ts';
import { bulgeNumber } from './numbers.ts';

/**
 * The groups of an R12 file (AC1009): POLYLINE with VERTEX and SEQEND, no handles, which R12 does without.
 * makerjs's own writer starts outlines elsewhere, turns some about and rounds bulges to 7 decimals; what it makes
 * of the same model is compared with these in tests/files/makerjs-model.test.ts.
 */
export const r12 = (
  entities: readonly DxfEntity[],
  layers: readonly LayerStyle[],
  unit: LengthUnit,
  extents: Bounds,
): readonly Tag[] => [
  ...header('R12', unit, extents),
  ...section('TABLES', [
    ...table('LTYPE', [CONTINUOUS]),
    ...table('LAYER', [
      layerEntry('0', 7),
      ...layers.map(({ name, colorIndex }) => layerEntry(name, colorIndex)),
    ]),
    ...table('STYLE', [STANDARD_STYLE]),
  ]),
  ...section('BLOCKS', []),
  ...section('ENTITIES', entities.flatMap(entity)),
  text(0, 'EOF'),
];

const table = (name: string, entries: readonly (readonly Tag[])[]): readonly Tag[] => [
  text(0, 'TABLE'),
  text(2, name),
  whole(70, entries.length),
  ...entries.flat(),
  text(0, 'ENDTAB'),
];

/** 72 is always 65, the letter A. */
const CONTINUOUS: readonly Tag[] = [
  text(0, 'LTYPE'),
  text(2, 'CONTINUOUS'),
  whole(70, 0),
  text(3, 'Solid line'),
  whole(72, 65),
  whole(73, 0),
  real(40, 0),
];

const layerEntry = (name: string, colorIndex: number): readonly Tag[] => [
  text(0, 'LAYER'),
  text(2, name),
  whole(70, 0),
  whole(62, colorIndex),
  text(6, 'CONTINUOUS'),
];

/** No text is written, but readers look for this style. */
const STANDARD_STYLE: readonly Tag[] = [
  text(0, 'STYLE'),
  text(2, 'STANDARD'),
  whole(70, 0),
  real(40, 0),
  real(41, 1),
  real(50, 0),
  whole(71, 0),
  real(42, 1),
  text(3, 'txt'),
  text(4, ''),
];

function entity(drawn: DxfEntity): readonly Tag[] {
  const { layer } = drawn;
  if (drawn.kind === 'circle') {
    return [text(0, 'CIRCLE'), text(8, layer), ...point(10, drawn.center), real(40, drawn.radius)];
  }
  return [
    text(0, 'POLYLINE'),
    text(8, layer),
    whole(66, 1),
    ...point(10, { x: 0, y: 0 }),
    whole(70, drawn.closed ? 1 : 0),
    ...drawn.vertices.flatMap((vertex) => vertexTags(vertex, layer)),
    text(0, 'SEQEND'),
    text(8, layer),
  ];
}

const vertexTags = (vertex: Vertex, layer: string): readonly Tag[] => [
  text(0, 'VERTEX'),
  text(8, layer),
  ...point(10, vertex),
  ...(vertex.bulge === 0 ? [] : [text(42, bulgeNumber(vertex.bulge))]),
];
