import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../core/jigs/types.ts';
import { cutSolid } from '../../core/scene/cut-solid.ts';
import { demoScenes, SOME } from './demo-scenes.ts';
import { blockManifold, manifoldOf, sharedVolume } from './manifolds.ts';

/** mm². Of a flat face in space, its holes taken away: half the length of the sum of cross products. */
function areaOf(outline: readonly Vec3[], holes: readonly (readonly Vec3[])[]): number {
  const one = (corners: readonly Vec3[]): number => {
    let [x, y, z] = [0, 0, 0];
    for (const [index, a] of corners.entries()) {
      const b = corners[(index + 1) % corners.length] ?? a;
      x += a.y * b.z - a.z * b.y;
      y += a.z * b.x - a.x * b.z;
      z += a.x * b.y - a.y * b.x;
    }
    return Math.hypot(x, y, z) / 2;
  };
  return one(outline) - holes.reduce((sum, hole) => sum + one(hole), 0);
}

/** mm. A slice so thin that its volume over its thickness is the area of the cut. */
const SLICE = 1e-3;

describe('cutSolid', () => {
  // One drawer for each jig is enough: the solids are the same on the others.
  const scenes = demoScenes(SOME).flatMap(({ scenes: all, jigs }) =>
    jigs.flatMap((jig) => all.filter((one) => one.jig === jig).slice(0, 1)),
  );

  test('cutSolid: the faces have the area of a thin slice of the solid there', () => {
    let cut = 0;
    const wrong = scenes.flatMap(({ name, scene }) => {
      const { axis, from, to } = scene.section;
      return scene.solids.flatMap((solid) => {
        const body = manifoldOf(solid);
        return [0.31, 0.83].flatMap((share) => {
          const at = from + share * (to - from);
          const faces = cutSolid(solid, axis, at);
          const area = faces.reduce((sum, { outline, holes }) => sum + areaOf(outline, holes), 0);
          cut += faces.length;
          const far = 1e4;
          const low: Vec3 = { x: -far, y: -far, z: -far };
          const high: Vec3 = { x: far, y: far, z: far };
          const slice = blockManifold(
            { ...low, [axis]: at - SLICE / 2 },
            { ...high, [axis]: at + SLICE / 2 },
          );
          const truth = sharedVolume(body, slice) / SLICE;
          return Math.abs(area - truth) <= 0.05 + truth * 1e-4
            ? []
            : [`${name} ${solid.id} at ${at}: ${area} mm², not ${truth}`];
        });
      });
    });
    expect(wrong).toEqual([]);
    expect(cut).toBeGreaterThan(scenes.length * 6);
  });

  test('cutSolid: a plane between two sheets that touch cuts one of them', () => {
    const standing = scenes.filter(
      ({ jig, machine }) => jig.kind === 'step profile' && machine.kind === 'router',
    );
    expect(standing.length).toBeGreaterThan(0);
    for (const { scene } of standing) {
      const { axis, at } = scene.section;
      const sheets = scene.solids.filter(({ material }) => material === 'jig');
      expect(sheets).toHaveLength(2);
      expect(sheets.map((solid) => cutSolid(solid, axis, at).length).toSorted((a, b) => a - b)).toEqual([
        0, 1,
      ]);
    }
  });

  test('cutSolid: every corner of a face lies in the plane of the cut', () => {
    for (const { scene } of scenes) {
      const { axis, at } = scene.section;
      for (const solid of scene.solids) {
        for (const { outline, holes } of cutSolid(solid, axis, at)) {
          for (const corner of [outline, ...holes].flat()) expect(corner[axis]).toBeCloseTo(at, 9);
        }
      }
    }
  });
});
