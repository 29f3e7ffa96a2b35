import Module from 'manifold-3d';
import { describe, expect, test } from 'vitest';
import type { Jig, Pose } from '../../core/jigs/types.ts';
import { jigMesh } from '../../core/mesh/jig-mesh.ts';
import { checkMesh } from '../../core/mesh/check-mesh.ts';
import { write3mf } from '../../core/mesh/write-3mf.ts';
import { writeStl } from '../../core/mesh/write-stl.ts';
import { jigSolids } from '../../core/scene/jig-solids.ts';
import type { Solid } from '../../core/scene/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { demo } from '../pipeline/demo.ts';
import { manifoldOf, union } from '../scene/manifolds.ts';
import { boundsOf, openEdges, read3mf, readStl, type Triangles } from './read-mesh.ts';

const library = await Module();
library.setup();

const ORDERS = [
  ['harbor-library', 'laser-6', 'edge'],
  ['boathouse-frameless', 'laser-6', 'corner'],
  ['harbor-library', 'router', 'corner'],
  ['boathouse-frameless', 'router', 'edge'],
] as const;

/** The first jig of every kind of an order, aids to drilling too. */
const CASES = ORDERS.flatMap(([order, machineName, registration]) => {
  const machine = readMachine(machineName);
  const { jigs } = demo(order, machine, registration).design.plan;
  const firsts = jigs.filter((jig, index) => jigs.findIndex(({ kind }) => kind === jig.kind) === index);
  return firsts.map((jig) => ({ name: `${order}, ${machineName}: ${jig.id} ${jig.kind}`, jig, machine }));
});

const solidsOf = (jig: Jig, machine: Parameters<typeof jigSolids>[2]): readonly Solid[] => {
  const [seat] = jig.seats;
  if (seat === undefined) throw new Error(`${jig.id} has no seat`);
  return jigSolids(jig, seat, machine);
};

/** The jig as if no hole had ever been made for keys and pins. */
const unjoined = (jig: Jig): Jig => ({
  ...jig,
  pieces: jig.pieces.map((piece) => ({
    ...piece,
    holes: piece.holes.filter(({ purpose }) => purpose !== 'joint'),
  })),
});

/** A corner of a solid where it is seated. */
const placed = ({ origin, u, v }: Pose, x: number, y: number, z: number): readonly number[] => [
  origin.x + x * u.x + y * v.x + z * (u.y * v.z - u.z * v.y),
  origin.y + x * u.y + y * v.y + z * (u.z * v.x - u.x * v.z),
  origin.z + x * u.z + y * v.z + z * (u.x * v.y - u.y * v.x),
];

const cornersOf = (solids: readonly Solid[]) =>
  solids.flatMap(({ layers, pose }) =>
    layers.flatMap(({ outline, top = outline, from, to }) => [
      ...outline.map(({ x, y }) => placed(pose, x, y, from)),
      ...top.map(({ x, y }) => placed(pose, x, y, to)),
    ]),
  );

/** What the geometry library makes of triangles read from a file; it throws for what is not closed. */
function solidOf(triangles: Triangles) {
  const numbers = new Map<string, number>();
  const vertices: number[] = [];
  const triVerts = triangles.flat().map((place) => {
    const key = place.join(',');
    const number = numbers.get(key) ?? numbers.size;
    if (number === numbers.size) vertices.push(...place);
    numbers.set(key, number);
    return number;
  });
  return new library.Manifold(
    new library.Mesh({
      numProp: 3,
      vertProperties: new Float32Array(vertices),
      triVerts: new Uint32Array(triVerts),
    }),
  );
}

describe('jigMesh, written and read back', () => {
  test('has every kind of jig among its cases', () => {
    expect(new Set(CASES.map(({ jig }) => jig.kind)).size).toBe(6);
  });

  test.for(CASES)('$name: closed, one body, of the volume and size of the jig', ({ jig, machine }) => {
    const solids = solidsOf(jig, machine);
    const mesh = jigMesh(solids, library);
    expect(checkMesh(mesh, jig.id)).toEqual([]);
    const whole = union([
      union(solids.map(manifoldOf)),
      union(solidsOf(unjoined(jig), machine).map(manifoldOf)),
    ]);
    const { size } = boundsOf(cornersOf(solids));
    const stl = readStl(writeStl(mesh, jig.id));
    const package3mf = read3mf(write3mf(mesh, jig.id));
    for (const { triangles } of [stl, package3mf]) {
      expect(openEdges(triangles)).toEqual([]);
      const solid = solidOf(triangles);
      expect(solid.status()).toBe('NoError');
      expect(solid.decompose()).toHaveLength(1);
      expect(Math.abs(solid.volume() / whole.volume() - 1)).toBeLessThan(1e-3);
      const bounds = boundsOf(triangles.flat());
      expect(bounds.min).toEqual([0, 0, 0]);
      // Half a step of the grid at either end.
      bounds.size.forEach((value, axis) => expect(Math.abs(value - (size[axis] ?? NaN))).toBeLessThan(2e-4));
    }
    expect(package3mf.triangles).toEqual(stl.triangles);
  });

  test('gives the same bytes twice', () => {
    for (const { jig, machine } of CASES.slice(0, 2)) {
      const make = () => jigMesh(solidsOf(jig, machine), library);
      expect(writeStl(make(), jig.id)).toEqual(writeStl(make(), jig.id));
      expect(write3mf(make(), jig.id)).toEqual(write3mf(make(), jig.id));
    }
  });

  test('fuses plates whose faces are a rounding error apart', () => {
    const plate = (id: string, z: number): Solid => ({
      ...BLOCK,
      id,
      pose: { ...BLOCK.pose, origin: { x: 0.1, y: 0.2, z } },
    });
    const solid = solidOf(
      readStl(writeStl(jigMesh([plate('a', 0.1), plate('b', 3.1 + 1e-9)], library), 'x')).triangles,
    );
    expect(solid.decompose()).toHaveLength(1);
    expect(solid.volume()).toBeCloseTo(10 * 10 * 6, 1);
  });

  test('of no solids has no triangles', () => {
    expect(jigMesh([], library)).toEqual({ positions: [], triangles: [] });
  });
});

const BLOCK: Solid = {
  id: 'block',
  name: 'block',
  group: 'jig',
  material: 'jig',
  pose: { origin: { x: 0, y: 0, z: 0 }, u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 } },
  layers: [
    {
      outline: [
        { x: 0, y: 0 },
        { x: 10, y: 0 },
        { x: 10, y: 10 },
        { x: 0, y: 10 },
      ],
      holes: [],
      from: 0,
      to: 3,
    },
  ],
  lines: [],
  apart: { x: 0, y: 0, z: 0 },
  ghost: false,
};
