import { describe, expect, test } from 'vitest';
import type { Corner } from '../../core/fastening/types.ts';
import { aidScene } from '../../core/scene/aid-scene.ts';
import type { SeatScene } from '../../core/scene/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { demo } from '../pipeline/demo.ts';
import { blockOf, groupManifold, manifoldOf, sharedVolume } from './manifolds.ts';

/** mm. Faces that touch are no farther apart than this. */
const TOUCH = 1e-6;

/** mm³. Noise of rounding on faces that only touch. */
const NOISE = 1e-3;

interface Case {
  readonly name: string;
  readonly corner: Corner | null;
  readonly scene: SeatScene;
}

/** One use of every aid of the demo order, on the drawer that it serves first. */
function cases(): readonly Case[] {
  const machine = readMachine('laser-6');
  const { design, workshop } = demo('harbor-library', machine, 'edge');
  const { standard } = workshop;
  return [...new Set(design.plan.aids.map(({ jig }) => jig))].map((jig) => {
    const use = design.plan.aids.find((one) => one.jig === jig);
    const fastening = design.fastenings.find(({ fit }) => fit === use?.fit);
    if (use === undefined || fastening === undefined) throw new Error(`${jig.id} serves nobody`);
    const scene = aidScene({ fastening, jig, corner: use.corner, standard, machine });
    if (scene === null) throw new Error(`${jig.id} has no seat`);
    return {
      name: `${jig.id} on ${use.fit.drawer.cabinet} ${use.fit.drawer.drawer}`,
      corner: use.corner,
      scene,
    };
  });
}

const all = cases();
const guides = all.filter(({ corner }) => corner !== null);

describe('aidScene', () => {
  test('aidScene: there are guides, and of both ends and hands', () => {
    const corners = new Set(guides.map(({ corner }) => `${corner?.end} ${corner?.hand}`));
    expect([...corners].toSorted()).toEqual(['bottom left', 'bottom right', 'top left', 'top right']);
  });

  test('aidScene: the aid shares no space with front or box', () => {
    const failing = all.filter(({ corner, scene }) => {
      const aid = groupManifold(scene, 'jig');
      const walls = corner === null ? 0 : sharedVolume(aid, groupManifold(scene, 'box'));
      return Math.max(walls, sharedVolume(aid, groupManifold(scene, 'front'))) >= NOISE;
    });
    expect(failing.map(({ name }) => name)).toEqual([]);
  });

  test('aidScene: a guide touches the box front and the side at its corner, and its bottom or top edge', () => {
    for (const { corner, scene } of guides) {
      const surfaces = new Set(scene.contacts.map(({ on }) => on));
      const third = corner?.end === 'top' ? 'box top edge' : 'box bottom';
      expect([...surfaces].toSorted()).toEqual(['box front inside', 'box side inside', third].toSorted());
      const aid = groupManifold(scene, 'jig');
      expect(aid.minGap(groupManifold(scene, 'box'), 1)).toBeLessThanOrEqual(TOUCH);
      const box = blockOf(groupManifold(scene, 'box'));
      const block = blockOf(aid);
      // The cabinet's right is at x = 0: a guide for that hand is in that half of the box.
      const middle = (box.min.x + box.max.x) / 2;
      const at = (block.min.x + block.max.x) / 2;
      expect(corner?.hand === 'right' ? at < middle : at > middle).toBe(true);
    }
  });

  test('aidScene: each bit passes through its bore, and nothing of the guide is in its way', () => {
    const failing = guides.filter(({ scene }) => {
      const aid = groupManifold(scene, 'jig');
      return (
        scene.tools.length === 0 || scene.tools.some((bit) => sharedVolume(manifoldOf(bit), aid) >= NOISE)
      );
    });
    expect(failing.map(({ name }) => name)).toEqual([]);
  });
});
