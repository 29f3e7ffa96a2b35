import { describe, expect, test } from 'vitest';
import { bundleOrder } from '../../core/bundle.ts';
import { USUAL } from '../../core/files/output-choice.ts';
import { checkMesh } from '../../core/mesh/check-mesh.ts';
import type { Mesh } from '../../core/mesh/types.ts';
import { write3mf } from '../../core/mesh/write-3mf.ts';
import { writeStl } from '../../core/mesh/write-stl.ts';
import { loadManifold } from '../../electron/cli/load-manifold.ts';
import { readMachine } from '../jigs/setups.ts';
import { bundleFiles } from '../pipeline/bundle-files.ts';
import { demo } from '../pipeline/demo.ts';
import { read3mf, readStl } from './read-mesh.ts';

/** A corner cut off a block: 1/6 of 3 × 3 × 4 is 6 mm³. */
const TETRAHEDRON: Mesh = {
  positions: [
    [0, 0, 0],
    [3, 0, 0],
    [0, 3, 0],
    [0, 0, 4],
  ],
  triangles: [
    [0, 2, 1],
    [0, 1, 3],
    [0, 3, 2],
    [1, 2, 3],
  ],
};

const codes = (mesh: Mesh) => checkMesh(mesh, 'X1').map(({ code, severity }) => [code, severity]);

describe('writeStl', () => {
  test('does not begin as the text form does, and has normals that point outwards', () => {
    const { header, normals } = readStl(writeStl(TETRAHEDRON, 'solid B1'));
    expect(header).toBe('STL in mm: solid B1');
    expect(normals.slice(0, 3)).toEqual([
      [0, 0, -1],
      [0, -1, 0],
      [-1, 0, 0],
    ]);
    expect(Math.hypot(...(normals[3] ?? []))).toBeCloseTo(1, 6);
  });
});

describe('write3mf', () => {
  // 3MF core specification: parts, content types, relationship and namespace, from memory.
  test('has the parts that the core specification asks for, in millimetres', () => {
    const { parts, model } = read3mf(write3mf(TETRAHEDRON, 'B1'));
    expect(Object.keys(parts)).toEqual(['[Content_Types].xml', '_rels/.rels', '3D/3dmodel.model']);
    expect(parts['[Content_Types].xml']).toContain(
      'Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"',
    );
    expect(parts['_rels/.rels']).toContain('Target="/3D/3dmodel.model"');
    expect(model).toMatch(/<model unit="millimeter" [^>]*3dmanufacturing\/core\/2015\/02">/);
    expect(model).toContain('<build><item objectid="1"/></build>');
  });

  test('escapes what XML has a meaning for, and leaves out what it has no place for', () => {
    expect(read3mf(write3mf(TETRAHEDRON, '<A & "B">\u0001')).model).toContain(
      'name="&lt;A &amp; &quot;B&quot;&gt;"',
    );
  });
});

describe('checkMesh', () => {
  test('finds nothing on a closed solid', () => expect(codes(TETRAHEDRON)).toEqual([]));

  test('finds a missing triangle, one turned about, one without area, and a solid inside out', () => {
    const [first = [0, 0, 0], ...rest] = TETRAHEDRON.triangles;
    expect(codes({ ...TETRAHEDRON, triangles: rest })).toContainEqual(['mesh/open', 'error']);
    expect(codes({ ...TETRAHEDRON, triangles: [[first[0], first[2], first[1]], ...rest] })).toContainEqual([
      'mesh/open',
      'error',
    ]);
    const flat = { ...TETRAHEDRON, triangles: [...TETRAHEDRON.triangles, [1, 1, 2] as const] };
    expect(codes(flat)).toContainEqual(['mesh/degenerate', 'warning']);
    const turned = TETRAHEDRON.triangles.map(([a, b, c]) => [a, c, b] as const);
    expect(codes({ ...TETRAHEDRON, triangles: turned })).toEqual([['mesh/no-volume', 'error']]);
    expect(codes({ positions: [], triangles: [] })).toEqual([['mesh/no-volume', 'error']]);
  });
});

describe('bundleOrder with solids', () => {
  const { design, workshop } = demo('boathouse-frameless', readMachine('laser-6'), 'edge');
  const choice = { ...USUAL, kinds: ['solids' as const], jigs: ['B1'] };

  test('writes an STL and a 3MF file of the picked jigs, and nothing else', async () => {
    const files = await bundleFiles(bundleOrder(design, [], workshop, choice, { manifold: loadManifold }));
    expect(files.map(({ path }) => path)).toEqual(['solids/B1.stl', 'solids/B1.3mf']);
  });

  test('throws where no geometry library is given', async () => {
    await expect(bundleFiles(bundleOrder(design, [], workshop, choice))).rejects.toThrow(RangeError);
  });
});
