import { describe, expect, test } from 'vitest';
import type { Jig, Vec3 } from '../../core/jigs/types.ts';
import type { Edge } from '../../core/order/types.ts';
import type { SceneContact, SeatScene, Solid } from '../../core/scene/types.ts';
import { demoScenes, type DemoScene } from './demo-scenes.ts';
import { blockManifold, blockOf, groupManifold, manifoldOf, sharedVolume } from './manifolds.ts';
import { inBoxWalls, inFront, inSolid, inwards, setbackAt } from './oracle.ts';

/** mm. Faces that touch are no farther apart than this. */
const TOUCH = 1e-6;

/** mm³. Shared by solids that only touch: noise of rounding on faces of some thousand mm². */
const NOISE = 1e-3;

/** mm. From a touching face into what lies on either side of it. */
const INTO = 0.01;

const of = (scene: SeatScene, group: Solid['group']): readonly Solid[] =>
  scene.solids.filter((solid) => solid.group === group);

const boxBlock = (scene: SeatScene) => blockOf(groupManifold(scene, 'box'));

/** What fails, each with the scene that it fails in; empty is right. */
const failures = (scenes: readonly DemoScene[], check: (one: DemoScene) => readonly string[]) =>
  scenes.flatMap((one) => check(one).map((why) => `${one.name}: ${why}`));

/** Points a little inside a face from the middles of its longer sides. */
function facePoints({ shape }: SceneContact): readonly Vec3[] {
  if (shape.kind === 'line') return [];
  const { outline, normal } = shape;
  return outline.flatMap((a, index): readonly Vec3[] => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const along = { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z };
    const length = Math.hypot(along.x, along.y, along.z);
    if (length < 1) return [];
    // Counter-clockwise round the normal, the face lies to the left: normal x along.
    const left = {
      x: (normal.y * along.z - normal.z * along.y) / length,
      y: (normal.z * along.x - normal.x * along.z) / length,
      z: (normal.x * along.y - normal.y * along.x) / length,
    };
    return [
      {
        x: (a.x + b.x) / 2 + INTO * left.x,
        y: (a.y + b.y) / 2 + INTO * left.y,
        z: (a.z + b.z) / 2 + INTO * left.z,
      },
    ];
  });
}

const moved = (point: Vec3, by: Vec3, times: number): Vec3 => ({
  x: point.x + by.x * times,
  y: point.y + by.y * times,
  z: point.z + by.z * times,
});

/** mm from the face that a contact registers on, for each of its corners. */
function distances({ scene, fit }: DemoScene, { on, edge, shape }: SceneContact): readonly number[] {
  const points = shape.kind === 'line' ? shape.line : [shape.outline, ...shape.holes].flat();
  return points.map((point) => {
    if (on === 'front back') return Math.abs(point.z);
    if (edge === null) return NaN;
    const setback = on === 'box' ? fit.overhang[edge] : setbackAt(point.z, fit);
    // A jig serves overhangs that differ by no more than 0.001 mm; the box stands against the jig.
    const box = boxBlock(scene);
    const boxAt = { bottom: box.min.y, top: box.max.y, right: box.min.x, left: box.max.x }[edge];
    const axis = edge === 'bottom' || edge === 'top' ? point.y : point.x;
    if (on === 'box') {
      expect(Math.abs(inwards(edge, point, fit) - setback)).toBeLessThan(0.001);
      return Math.abs(axis - boxAt);
    }
    return Math.abs(inwards(edge, point, fit) - setback);
  });
}

const demos = demoScenes();

describe.for(demos)('$name', ({ scenes, drawers, jigs }) => {
  test('seatScene: every drawer is set at its bottom and at a side', () => {
    const sets = new Map<unknown, Set<Edge>>();
    for (const { fit, scene } of scenes) {
      sets.set(fit, new Set([...(sets.get(fit) ?? []), ...scene.edges]));
    }
    expect(sets.size).toBe(drawers);
    for (const edges of sets.values()) {
      expect(edges.has('bottom') && (edges.has('left') || edges.has('right'))).toBe(true);
    }
    expect(new Set(scenes.map(({ jig }) => jig)).size).toBe(jigs.length);
  });

  test('seatScene: contacts lie within 1e-6 mm of the face that they register on', () => {
    const found = failures(scenes, (one) =>
      one.scene.contacts.flatMap((contact) =>
        distances(one, contact)
          .filter((distance) => !(distance <= TOUCH))
          .map((distance) => `${contact.id} is ${distance} mm off the ${contact.on}`),
      ),
    );
    expect(found).toEqual([]);
  });

  test('seatScene: each edge in use has a contact on the front and one on the box', () => {
    const found = failures(scenes, ({ scene }) =>
      scene.edges.flatMap((edge) =>
        (['front edge', 'box'] as const)
          .filter((on) => !scene.contacts.some((contact) => contact.on === on && contact.edge === edge))
          .map((on) => `no contact on the ${on} at the ${edge}`),
      ),
    );
    expect(found).toEqual([]);
  });

  test('seatScene: behind each touching face is the jig, before it what the jig touches', () => {
    let tried = 0;
    const found = failures(scenes, ({ scene, fit }) => {
      const box = boxBlock(scene);
      return scene.contacts.flatMap((contact) => {
        const { shape } = contact;
        const solid = scene.solids.find(({ id }) => id === contact.solid);
        if (shape.kind === 'line' || solid === undefined) return solid === undefined ? ['no such solid'] : [];
        return facePoints(contact).flatMap((point) => {
          tried += 1;
          const jigSide = inSolid(moved(point, shape.normal, INTO), solid);
          const other = moved(point, shape.normal, -INTO);
          const touched = contact.on === 'box' ? inBoxWalls(other, box, fit) : inFront(other, fit);
          return [
            ...(jigSide ? [] : [`${contact.id}: no jig at ${JSON.stringify(point)}`]),
            ...(touched ? [] : [`${contact.id}: no ${contact.on} at ${JSON.stringify(point)}`]),
          ];
        });
      });
    });
    expect(found).toEqual([]);
    expect(tried).toBeGreaterThan(scenes.length * 8);
  });

  test('seatScene: jig, front and box share no space, and the jig touches the other two', () => {
    const found = failures(scenes, ({ scene }) => {
      const jig = groupManifold(scene, 'jig');
      const front = groupManifold(scene, 'front');
      const box = groupManifold(scene, 'box');
      const pairs = [
        ['jig and front', jig, front],
        ['jig and box', jig, box],
        ['front and box', front, box],
      ] as const;
      const overlaps = pairs.flatMap(([name, a, b]) => {
        const volume = sharedVolume(a, b);
        return volume < NOISE ? [] : [`${name} share ${volume} mm³`];
      });
      const gaps = [
        ['front', jig.minGap(front, 1)],
        ['box', jig.minGap(box, 1)],
      ] as const;
      return [
        ...overlaps,
        ...gaps.flatMap(([name, gap]) => (gap <= TOUCH ? [] : [`the jig is ${gap} mm off the ${name}`])),
      ];
    });
    expect(found).toEqual([]);
  });

  test('seatScene: the jig stays 1 mm clear of the bench and out of the space inside the box', () => {
    const found = failures(scenes, ({ scene, fit }) => {
      const jig = groupManifold(scene, 'jig');
      const lowest = blockOf(jig).min.z;
      expect(scene.keepOuts.map(({ id }) => id)).toEqual(['bench', 'driver']);
      return [
        ...(lowest >= -fit.frontThickness + 1 - TOUCH ? [] : [`it reaches down to ${lowest} mm`]),
        ...scene.keepOuts.flatMap(({ id, min, max }) => {
          const volume = sharedVolume(jig, blockManifold(min, max));
          return volume < NOISE ? [] : [`it reaches ${volume} mm³ into ${id}`];
        }),
      ];
    });
    expect(found).toEqual([]);
  });

  test('seatScene: a dimension runs from the edge of the face to the box, as long as its overhang', () => {
    const found = failures(scenes, ({ scene, fit }) => {
      const box = boxBlock(scene);
      return scene.dimensions.flatMap(({ edge, overhang, line: [from, to] }) => {
        const boxAt = { bottom: box.min.y, top: box.max.y, right: box.min.x, left: box.max.x }[edge];
        const end = edge === 'bottom' || edge === 'top' ? to.y : to.x;
        return [
          ...(Math.abs(inwards(edge, from, fit)) <= TOUCH ? [] : [`${edge}: does not start at the face`]),
          ...(Math.abs(end - boxAt) <= TOUCH ? [] : [`${edge}: does not end at the box`]),
          ...(Math.abs(overhang - fit.overhang[edge]) < 0.001 ? [] : [`${edge}: says ${overhang}`]),
          ...(Math.abs(inwards(edge, to, fit) - overhang) <= TOUCH ? [] : [`${edge}: is not so long`]),
        ];
      });
    });
    expect(found).toEqual([]);
    for (const { scene } of scenes) expect(scene.dimensions.map(({ edge }) => edge)).toEqual(scene.edges);
  });

  test('seatScene: the jig hangs on the edge in use, and the arrow points to the cabinet left', () => {
    for (const { scene, fit, jig } of scenes) {
      const { min, max } = blockOf(groupManifold(scene, 'jig'));
      const past = { bottom: -min.y, top: max.y - fit.frontH, right: -min.x, left: max.x - fit.frontW };
      for (const edge of ['left', 'right', 'top', 'bottom'] as const) {
        expect(past[edge] > 1, `${jig.id} at the ${edge}`).toBe(scene.edges.includes(edge));
      }
      const [from, to] = scene.cabinetLeft.arrow.line;
      expect(to.x).toBeGreaterThan(from.x);
      expect([to.y, to.z]).toEqual([from.y, from.z]);
      expect(scene.cabinetLeft.edge.map(({ x }) => x)).toEqual([fit.frontW, fit.frontW]);
    }
  });

  test('seatScene: the pieces of a jig share no space with one another, keys and pins included', () => {
    const seats = new Map<string, DemoScene>();
    for (const one of scenes)
      seats.set(`${one.jig.id} ${one.scene.dimensions.map(({ overhang }) => overhang).join()}`, one);
    const found = failures([...seats.values()], ({ scene }) => {
      const pieces = of(scene, 'jig').map((solid) => ({ id: solid.id, body: manifoldOf(solid) }));
      return pieces.flatMap((a, index) =>
        pieces.slice(index + 1).flatMap((b) => {
          const volume = sharedVolume(a.body, b.body);
          return volume < NOISE ? [] : [`${a.id} and ${b.id} share ${volume} mm³`];
        }),
      );
    });
    expect(found).toEqual([]);
  });

  test('seatScene: there is a solid for each copy of each piece, with a name and an id of its own', () => {
    for (const { scene, jig } of scenes) {
      const ids = scene.solids.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const piece of jig.pieces) {
        expect(ids.filter((id) => id.replace(/-\d+$/, '') === piece.name)).toHaveLength(piece.copies);
      }
    }
  });
});

const kinds = (all: readonly { readonly jigs: readonly Jig[] }[]) =>
  new Set(all.flatMap(({ jigs }) => jigs.map(({ kind }) => kind)));

test('demoScenes: every kind of jig is seated, and a block of two widths by both', () => {
  expect([...kinds(demos)].toSorted()).toEqual([
    'bottom fence',
    'corner fence',
    'side spacer',
    'step profile',
  ]);
  const both = demos
    .flatMap(({ scenes }) => scenes)
    .filter(({ jig }) => jig.seats.length === 2)
    .map(({ jig, scene }) =>
      jig.seats.findIndex(({ sets }) => sets[0]?.overhang === scene.dimensions[0]?.overhang),
    );
  expect(new Set(both)).toEqual(new Set([0, 1]));
});
