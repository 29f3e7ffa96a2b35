import type { ReadDxf, ReadEntity } from '../readers/types.ts';

type Seen = Pick<ReadDxf, 'entities' | 'layers'>;

/** Half of the last of six places, and what a double adds. */
const COORDINATE = 0.5e-6 + 1e-9;
/** Half of the last of nine places. */
const BULGE = 0.5e-9 + 1e-12;

/**
 * In what a read file differs from what it should be: layers, entities in order, and numbers by more than the
 * file's decimals can say; a sentence each, with both values.
 */
export function differencesOf(seen: Seen, wanted: Seen): readonly string[] {
  return [
    ...different('layers', sorted(seen.layers), sorted(wanted.layers)),
    ...different('entities', seen.entities.length, wanted.entities.length),
    ...seen.entities.flatMap((entity, index) => {
      const other = wanted.entities[index];
      return other === undefined ? [] : entityDifferences(`entity ${index}`, entity, other);
    }),
  ];
}

const sorted = (layers: Seen['layers']): object =>
  Object.entries(layers).toSorted(([a], [b]) => (a < b ? -1 : 1));

function entityDifferences(name: string, seen: ReadEntity, wanted: ReadEntity): readonly string[] {
  const shapes = different(name, shapeOf(seen), shapeOf(wanted));
  if (shapes.length > 0) return shapes;
  return [
    ...apart(`${name} circle`, seen.circle ?? [], wanted.circle ?? [], [COORDINATE, COORDINATE, COORDINATE]),
    ...seen.vertices.flatMap((vertex, corner) =>
      apart(`${name} vertex ${corner}`, vertex, wanted.vertices[corner] ?? [], [
        COORDINATE,
        COORDINATE,
        BULGE,
      ]),
    ),
  ];
}

const shapeOf = ({ type, layer, closed, vertices, circle }: ReadEntity): object => ({
  type,
  layer,
  closed,
  vertices: vertices.length,
  circle: circle !== null,
});

function different(name: string, seen: object | number, wanted: object | number): readonly string[] {
  const [a, b] = [JSON.stringify(seen), JSON.stringify(wanted)];
  return a === b ? [] : [`${name}: ${a} is not ${b}`];
}

const apart = (
  name: string,
  seen: readonly number[],
  wanted: readonly number[],
  within: readonly number[],
): readonly string[] =>
  seen.flatMap((value, index) => {
    const other = wanted[index] ?? Number.NaN;
    const tolerance = within[index] ?? 0;
    return Math.abs(value - other) <= tolerance
      ? []
      : [`${name}: ${value} is not ${other} within ${tolerance}`];
  });
