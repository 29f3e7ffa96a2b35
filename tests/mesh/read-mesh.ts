import { strFromU8, unzipSync } from 'fflate';

type Place = readonly number[];

/** Triangles as three places each, as a reader of the file has them. */
export type Triangles = readonly (readonly Place[])[];

/** Binary STL by its published layout: 80 bytes, count, then 12 floats and 2 bytes for each triangle. From memory. */
export function readStl(bytes: Uint8Array): {
  readonly header: string;
  readonly normals: readonly Place[];
  readonly triangles: Triangles;
} {
  const buffer = Buffer.from(bytes);
  const count = buffer.readUInt32LE(80);
  if (buffer.length !== 84 + 50 * count) throw new Error(`${buffer.length} bytes for ${count} triangles`);
  const normals: Place[] = [];
  const triangles: Place[][] = [];
  for (let at = 84; at < buffer.length; at += 50) {
    const floats = Array.from({ length: 12 }, (_, index) => buffer.readFloatLE(at + 4 * index));
    normals.push(floats.slice(0, 3));
    triangles.push([floats.slice(3, 6), floats.slice(6, 9), floats.slice(9, 12)]);
  }
  return { header: buffer.toString('latin1', 0, 80).replace(/\0+$/, ''), normals, triangles };
}

/** The files of a 3MF package, and its one mesh. */
export function read3mf(bytes: Uint8Array): {
  readonly parts: Readonly<Record<string, string>>;
  readonly model: string;
  readonly triangles: Triangles;
} {
  const parts = Object.fromEntries(
    Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]),
  );
  const model = parts['3D/3dmodel.model'] ?? '';
  const vertices = [...model.matchAll(/<vertex x="([^"]+)" y="([^"]+)" z="([^"]+)"\/>/g)].map((found) =>
    found.slice(1).map(Number),
  );
  const triangles = [...model.matchAll(/<triangle v1="(\d+)" v2="(\d+)" v3="(\d+)"\/>/g)].map((found) =>
    found.slice(1).map((number) => vertices[Number(number)] ?? []),
  );
  return { parts, model, triangles };
}

/** Edges that are not walked exactly once each way; places are the same only when every bit of them is. */
export function openEdges(triangles: Triangles): readonly string[] {
  const times = new Map<string, number>();
  for (const triangle of triangles) {
    const keys = triangle.map((place) => place.join(','));
    for (const [from, to] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      const edge = `${keys[from]}>${keys[to]}`;
      times.set(edge, (times.get(edge) ?? 0) + 1);
    }
  }
  return [...times]
    .filter(([edge, count]) => count !== 1 || times.get(edge.split('>').toReversed().join('>')) !== 1)
    .map(([edge]) => edge);
}

/** Least and greatest x, y and z. */
export function boundsOf(places: readonly Place[]): { readonly min: Place; readonly size: Place } {
  const along = (axis: number) => places.map((place) => place[axis] ?? NaN);
  const min = [0, 1, 2].map((axis) => along(axis).reduce((a, b) => Math.min(a, b)));
  const max = [0, 1, 2].map((axis) => along(axis).reduce((a, b) => Math.max(a, b)));
  return { min, size: max.map((value, axis) => value - (min[axis] ?? NaN)) };
}
