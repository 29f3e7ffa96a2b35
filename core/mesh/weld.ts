import type { Mesh, MeshPoint, MeshTriangle } from './types.ts';

/** Makes one of all positions that are the same place, and leaves out triangles that come to nothing by it. */
export function weld({ positions, triangles }: Mesh): Mesh {
  const numbers = new Map<string, number>();
  const kept: MeshPoint[] = [];
  const numberOf = positions.map((point) => {
    const key = point.join(' ');
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, kept.length);
    kept.push(point);
    return kept.length - 1;
  });
  const welded = triangles
    .map(([a, b, c]): MeshTriangle => [numberOf[a] ?? NaN, numberOf[b] ?? NaN, numberOf[c] ?? NaN])
    .filter(([a, b, c]) => a !== b && b !== c && c !== a);
  return { positions: kept, triangles: withoutPairs(welded) };
}

/** Two triangles back to back bound nothing. */
function withoutPairs(triangles: readonly MeshTriangle[]): readonly MeshTriangle[] {
  const open = new Map<string, MeshTriangle[]>();
  for (const triangle of triangles) {
    const [a, b, c] = fromLowest(triangle);
    const opposite = open.get(`${a} ${c} ${b}`);
    if (opposite !== undefined && opposite.length > 0) {
      opposite.pop();
      continue;
    }
    const key = `${a} ${b} ${c}`;
    const same = open.get(key);
    if (same === undefined) open.set(key, [triangle]);
    else same.push(triangle);
  }
  return [...open.values()].flat();
}

function fromLowest([a, b, c]: MeshTriangle): MeshTriangle {
  if (a < b && a < c) return [a, b, c];
  return b < c ? [b, c, a] : [c, a, b];
}
