import { DoubleSide, Mesh, MeshBasicMaterial, Raycaster, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { directionsOf, type Directions } from '../../core/scene/directions.ts';
import { lightOn } from '../../core/scene/light.ts';
import { paintedScene, type Painted } from '../../core/scene/painted-scene.ts';
import type { SeatScene, Solid } from '../../core/scene/types.ts';
import { add, scale } from '../../core/scene/vec.ts';
import type { Point } from '../../core/geometry/types.ts';
import type { Vec3 } from '../../core/jigs/types.ts';
import { solidMesh } from '../../renderer/seat/space/geometry.ts';
import { demoScenes, SOME } from './demo-scenes.ts';

// What stands before what is asked of three.js's ray caster, on meshes made apart from the faces under test.

/** mm. Nearer to a border than this, either side of it may be seen. */
const BORDER = 0.05;

/** mm. From what is looked at to the eye. */
const EYE = 5000;

const WAYS = [
  { azimuth: 302, elevation: 34 },
  { azimuth: -90, elevation: 90 },
  { azimuth: 17, elevation: 61 },
  { azimuth: 135, elevation: 12 },
  { azimuth: 250, elevation: -25 },
];

/** One scene of each kind of jig of each demo. */
const SCENES = demoScenes(SOME).flatMap(({ name, scenes }) => {
  const kinds = new Map(scenes.map(({ jig, scene }) => [`${jig.kind} ${jig.seats.length}`, scene]));
  return [...kinds].map(([kind, scene]) => ({ name: `${name}: ${kind}`, scene }));
});

function cast(solids: readonly Solid[], seen: Directions) {
  const meshes = solids
    .filter(({ ghost }) => !ghost)
    .map((solid) => {
      const mesh = new Mesh(solidMesh(solid), new MeshBasicMaterial({ side: DoubleSide }));
      mesh.name = solid.id;
      return mesh;
    });
  const caster = new Raycaster();
  const way = scale(seen.viewer, -1);
  return (point: Vec3) => {
    const from = add(point, scale(seen.viewer, EYE));
    caster.set(new Vector3(from.x, from.y, from.z), new Vector3(way.x, way.y, way.z));
    return caster.intersectObjects(meshes, false);
  };
}

/** Even-odd, with a margin: null where the point is too near a border to tell. */
function covers(rings: readonly (readonly Point[])[], { x, y }: Point): boolean | null {
  let odd = false;
  for (const ring of rings) {
    for (const [index, a] of ring.entries()) {
      const b = ring[(index + 1) % ring.length] ?? a;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const along = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
      if (Math.hypot(a.x + along * dx - x, a.y + along * dy - y) < BORDER) return null;
      if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * dx) odd = !odd;
    }
  }
  return odd;
}

/** The solid whose face is drawn last over a point, '' for none, null where it is too near a border. */
function drawnAt(painted: readonly Painted<string>[], point: Point) {
  let last: Extract<Painted<string>, { readonly kind: 'face' }> | '' = '';
  for (const one of painted) {
    if (one.kind !== 'face') continue;
    const covered = covers(one.rings, point);
    if (covered === null) return null;
    if (covered) last = one;
  }
  return last;
}

/** A grid of points round what must be seen, skewed so that it meets no row of corners. */
const gridOf = ({ middle, views: [view] }: SeatScene): readonly Point[] => {
  const reach = 1.4 * Math.max(view?.half.across ?? 0, view?.half.up ?? 0, middle.z);
  return Array.from({ length: 24 }, (_, row) =>
    Array.from({ length: 24 }, (__, column) => ({
      x: reach * ((column + 0.31) / 12 - 1 + row * 0.0007),
      y: reach * ((row + 0.43) / 12 - 1 + column * 0.0011),
    })),
  ).flat();
};

describe('a seat painted from the farthest to the nearest', () => {
  test.for(SCENES)('shows what a ray from the eye meets first: $name', ({ scene }) => {
    for (const way of WAYS) {
      const seen = directionsOf(way);
      const painted = paintedScene(scene.solids, [], seen);
      const hits = cast(scene.solids, seen);
      const middle = {
        x: scene.middle.x * seen.right.x + scene.middle.y * seen.right.y + scene.middle.z * seen.right.z,
        y: scene.middle.x * seen.up.x + scene.middle.y * seen.up.y + scene.middle.z * seen.up.z,
      };
      let compared = 0;
      const wrong: string[] = [];
      for (const { x, y } of gridOf(scene)) {
        const drawn = drawnAt(painted, { x: middle.x + x, y: middle.y + y });
        if (drawn === null) continue;
        const point = add(scene.middle, add(scale(seen.right, x), scale(seen.up, y)));
        const met = hits(point);
        const [first] = met;
        const near = met.filter(({ distance }) => distance < (first?.distance ?? 0) + BORDER);
        compared += 1;
        if (drawn === '') {
          if (first !== undefined) wrong.push(`nothing before ${first.object.name} at ${x} ${y}`);
          continue;
        }
        const same = near.find(({ object }) => object.name === drawn.solid);
        if (same === undefined) {
          wrong.push(`${drawn.solid} before ${first?.object.name ?? 'nothing'} at ${x} ${y}`);
          continue;
        }
        const { x: nx = 0, y: ny = 0, z: nz = 0 } = same.face?.normal ?? {};
        const light = lightOn({ x: nx, y: ny, z: nz });
        const lit = near.some(({ face }) => {
          const of = face?.normal;
          return of !== undefined && Math.abs(lightOn(of) - drawn.light) < 1e-3;
        });
        if (!lit) wrong.push(`light ${drawn.light} for ${light} on ${drawn.solid} at ${x} ${y}`);
      }
      expect(wrong, `from ${way.azimuth} ${way.elevation}`).toEqual([]);
      expect(compared).toBeGreaterThan(400);
    }
  });

  test('a cut leaves of solids what is on its side, and lines as they are', () => {
    // Straight from above, the plane of the picture is that of the front.
    const seen = directionsOf({ azimuth: -90, elevation: 90 });
    for (const { scene } of SCENES) {
      const { axis, side, at } = scene.section;
      /** mm beyond the cut. */
      const beyond = (point: Point): number => side * (point[axis] - at);
      const onLine = (past: number): Vec3 => ({ x: 0, y: 0, z: 0, [axis]: at + side * past });
      const lines = [{ mark: 'arrow', line: [onLine(-20), onLine(50)] }] as const;
      const painted = paintedScene(scene.solids, lines, seen, { axis, side, at });
      const corners = painted.flatMap((one) => (one.kind === 'face' ? one.rings.flat() : []));
      expect(corners.length).toBeGreaterThan(0);
      expect(Math.max(...corners.map(beyond))).toBeLessThan(1e-6);
      const ends = painted.flatMap((one) => (one.kind === 'line' && one.mark === 'arrow' ? one.ends : []));
      expect(Math.max(...ends.map(beyond))).toBeCloseTo(50, 9);
    }
  });

  test('no face covers half of the border of another that it does not hide', () => {
    const round = Array.from({ length: 24 }, (_, index) => {
      const angle = (index * Math.PI) / 12;
      return { x: 50 * Math.cos(angle), y: 50 * Math.sin(angle) };
    });
    const disc = (id: string, z: number): Solid => ({
      id,
      name: id,
      group: 'jig',
      material: 'jig',
      pose: { origin: { x: 0, y: 0, z }, u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 } },
      layers: [{ outline: round, holes: [], from: 0, to: 10 }],
      lines: [],
      apart: { x: 0, y: 0, z: 0 },
      ghost: false,
    });
    const seen = directionsOf({ azimuth: 300, elevation: 30 });
    const kinds = (solids: readonly Solid[]) =>
      paintedScene(solids, [], seen)
        .map((one) => (one.kind === 'line' ? 'line' : `${one.kind} of ${one.solid}`))
        .filter((kind, index, all) => kind !== all[index - 1]);
    expect(kinds([disc('a', 0)])).toEqual(['face of a', 'borders of a']);
    // Far above, and hiding nothing: in any order, borders at the end.
    expect(kinds([disc('a', 0), disc('b', 1000)]).slice(-2)).toEqual(['borders of a', 'borders of b']);
    // On top of it: the upper one hides the lower one's top and the borders of that.
    const stacked = kinds([disc('a', 0), disc('b', 10)]);
    expect(stacked[0]).toBe('face of a');
    expect(stacked.indexOf('borders of a')).toBeLessThan(stacked.lastIndexOf('face of b'));
    expect(stacked.at(-1)).toBe('borders of b');
  });
});
