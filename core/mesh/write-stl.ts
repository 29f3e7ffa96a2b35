import { cornersOf, normalOf } from './measure.ts';
import type { Mesh } from './types.ts';

const HEADER = 80;
const TRIANGLE = 50;

/**
 * Binary STL, millimetres by custom as the format has no unit: a header of 80 bytes, the count, then for each triangle
 * its normal, three corners and two bytes of 0, little-endian.
 */
export function writeStl(mesh: Mesh, name: string): Uint8Array {
  const bytes = new Uint8Array(HEADER + 4 + TRIANGLE * mesh.triangles.length);
  // It must not begin with "solid", which marks the text form.
  bytes.set(new TextEncoder().encode(`STL in mm: ${name}`).subarray(0, HEADER));
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER, mesh.triangles.length, true);
  mesh.triangles.forEach((triangle, index) => {
    const corners = cornersOf(mesh, triangle);
    const start = HEADER + 4 + TRIANGLE * index;
    [normalOf(corners).unit, ...corners]
      .flat()
      .forEach((value, place) => view.setFloat32(start + 4 * place, value, true));
  });
  return bytes;
}
