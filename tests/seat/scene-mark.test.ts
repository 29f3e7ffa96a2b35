import { describe, expect, it } from 'vitest';
import type { SeatScene } from '../../core/scene/types.ts';
import { fnv1a, sceneMark } from '../../renderer/seat/scene-mark.ts';
import { demoScenes, SOME } from '../scene/demo-scenes.ts';

// Test vectors of FNV-1a, 32 bit: IETF draft-eastlake-fnv, appendix C (from memory).
it.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['b', 0xe70c2de5],
  ['foo', 0xa9f37ed7],
  ['foobar', 0xbf9cf968],
])('fnv1a(%j) is as published', (text, hash) => {
  expect(fnv1a(text)).toBe(hash);
});

describe('sceneMark', () => {
  const scenes = demoScenes(SOME).flatMap((one) => one.scenes.map(({ scene }) => scene));

  const movedBy = (scene: SeatScene, x: number): SeatScene => ({
    ...scene,
    middle: { ...scene.middle, x: scene.middle.x + x },
  });

  it('tells the scenes of the demo orders apart', () => {
    const looks = new Set(scenes.map((scene) => JSON.stringify(scene)));
    expect(looks.size).toBeGreaterThan(10);
    expect(new Set(scenes.map(sceneMark)).size).toBe(looks.size);
  });

  it('tells of a hundredth of a mm, not of the last digits of a number', () => {
    for (const scene of scenes) {
      expect(sceneMark(movedBy(scene, 0.01))).not.toBe(sceneMark(scene));
      expect(sceneMark({ ...scene })).toBe(sceneMark(scene));
    }
    const [scene] = scenes.map((one) => ({ ...one, middle: { ...one.middle, x: 100 } }));
    if (scene === undefined) throw new Error('there are no scenes');
    expect(sceneMark(movedBy(scene, 1e-9))).toBe(sceneMark(scene));
  });
});
