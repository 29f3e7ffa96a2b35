import { describe, expect, test } from 'vitest';
import type { Fastening } from '../../../core/fastening/types.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { drawerName } from '../../../core/fit/drawer-name.ts';
import { planAids } from '../../../core/jigs/aids/plan-aids.ts';
import { partsOf } from '../../../core/parts/parts-of.ts';
import { STROKE_FONT } from '../../../shared/stroke-font.ts';
import { contextOf } from '../setups.ts';
import {
  CORNERS,
  fasteningOf,
  fitsOf,
  oneFit,
  placeAt,
  SCREW_LENGTH,
  STANDARD,
  type PlaceOptions,
} from './fastenings.ts';

const laser = contextOf('laser-6');
const LEAN = { side: 15, rail: 0 };

/** One screw at each corner; those at the top 16 mm below the edge. */
const corners = (fit: DrawerFit, options: PlaceOptions = {}) =>
  CORNERS.map((corner) =>
    placeAt(fit, corner, { ...(corner.end === 'top' ? { fromEnd: 16 } : {}), ...options }),
  );

const plan = (fastenings: readonly Fastening[], context = laser) =>
  planAids(fastenings, STANDARD, context, undefined, 1);

const ids = ({ value }: ReturnType<typeof plan>) => value.jigs.map(({ id, hand }) => `${id} ${hand}`);

const uses = ({ value }: ReturnType<typeof plan>) =>
  value.uses.map(
    ({ fit, jig, corner }) =>
      `${drawerName(fit.drawer)}: ${corner === null ? 'pull' : `${corner.hand} ${corner.end}`} ${jig.id}`,
  );

const [first, second, third] = fitsOf(
  'A,1,top,1,full overlay,18,5,',
  'B,1,only,1,full overlay,24,8,',
  'C,1,only,1,full overlay,30,10,',
);
if (first === undefined || second === undefined || third === undefined) throw new Error('three drawers');

describe('planAids: drill guides', () => {
  test('makes one guide for each corner whose bores are alike, whatever the drawers’ sizes; hands share a number', () => {
    const planned = plan([first, second, third].map((fit) => fasteningOf(fit, corners(fit, { lean: LEAN }))));
    expect(planned.findings).toEqual([]);
    expect(ids(planned)).toEqual(['G1L left', 'G1R right', 'G2L left', 'G2R right']);
    expect(uses(planned)).toHaveLength(12);
    expect(uses(planned).slice(0, 4)).toEqual([
      'A / top: left bottom G1L',
      'A / top: right bottom G1R',
      'A / top: left top G2L',
      'A / top: right top G2R',
    ]);
  });

  test('another lean, place, bit or depth is another guide; float noise is not', () => {
    const bottoms = (fit: DrawerFit, options: PlaceOptions, given = {}) =>
      fasteningOf(fit, [placeAt(fit, { hand: 'left', end: 'bottom' }, options)], given);
    const alike = plan([
      bottoms(first, { lean: LEAN }),
      bottoms(second, { lean: { side: 15 + 1e-7, rail: 0 }, fromSide: 38.1 + 1e-9 }),
    ]);
    expect(ids(alike)).toEqual(['G1L left']);
    const other = plan([
      bottoms(first, { lean: LEAN }),
      bottoms(second, { lean: { side: 12, rail: 0 } }),
      bottoms(third, { lean: LEAN, fromSide: 30 }),
      bottoms(first, { lean: LEAN }, { bit: 3.175 }),
    ]);
    expect(ids(other)).toEqual(['G1L left', 'G2L left', 'G3L left', 'G4L left']);
  });

  test('the guide’s bore is at the screw’s place: measured from the bottom’s upper face, leaning away going up', () => {
    const planned = plan([fasteningOf(first, corners(first, { lean: { side: 10, rail: 5 } }))]);
    for (const { jig, places, corner } of planned.value.uses) {
      const [bore] = jig.drilling?.bores ?? [];
      const [place] = places;
      if (bore === undefined || place === undefined || corner === null) throw new Error('no bore');
      // The bottom is 1/4 in thick and stands 1/2 in up.
      const y = corner.end === 'bottom' ? place.fromEnd - 19.05 : place.fromEnd;
      const inwards = (corner.hand === 'right') === (corner.end === 'bottom') ? 1 : -1;
      expect(bore.at.x).toBeCloseTo(inwards * place.fromSide, 9);
      expect(bore.at.y).toBeCloseTo(y, 9);
      expect(bore.slope.x).toBeCloseTo(inwards * Math.tan((10 * Math.PI) / 180), 9);
      expect(bore.slope.y).toBeCloseTo(Math.tan((5 * Math.PI) / 180), 9);
      expect(bore.angle).toBeCloseTo(place.angle, 9);
    }
  });

  test('has a bore for each screw of the row that it reaches, and says which it leaves to the template', () => {
    const corner = { hand: 'right', end: 'bottom' } as const;
    const row = [38.1, 200, 360, 500].map((fromSide, index) => placeAt(third, corner, { fromSide, index }));
    const up = placeAt(third, corner, { fromEnd: 140, index: 1, along: 'side' });
    const planned = plan([fasteningOf(third, [...row, up])]);
    const [use] = planned.value.uses;
    expect(use?.jig.drilling?.bores.map(({ at }) => at.x)).toEqual(
      [38.1, 200, 360].map((x) => expect.closeTo(x, 9)),
    );
    expect(use?.places.map(({ index }) => index)).toEqual([0, 1, 2]);
    expect(use?.beyond.map(({ index, along }) => `${along} ${index}`)).toEqual(['side 1', 'end 3']);
    expect(use?.words).toEqual([
      "G1R does not reach place 1 from the bottom right corner up the right side, place 3 from the bottom right corner along the bottom: mark them from the drawer's template.",
    ]);
    expect(use?.jig.parameters['length']).toBeLessThanOrEqual(400);
  });

  test('a box that just takes a guide keeps one of its own, though a wider one has nearly the same bores', () => {
    const far = (fit: DrawerFit, boxW: number, fromSide: number) => {
      const narrow = { ...fit, boxW };
      return fasteningOf(narrow, [placeAt(narrow, { hand: 'right', end: 'bottom' }, { fromSide })]);
    };
    const isServed = (boxW: number): boolean => plan([far(first, boxW, 200)]).value.jigs.length === 1;
    let [low, high] = [200, first.boxW];
    expect([isServed(low), isServed(high)]).toEqual([false, true]);
    while (high - low > 1e-9) {
      const middle = (low + high) / 2;
      if (isServed(middle)) high = middle;
      else low = middle;
    }
    // Within the tolerance in which bores are in the same place.
    const planned = plan([far(second, second.boxW, 200.0005), far(first, high, 200)]);
    expect(ids(planned)).toEqual(['G1R right', 'G2R right']);
    expect(uses(planned).map((use) => use.slice(-3))).toEqual(['G1R', 'G2R']);
    expect(planned.findings).toEqual([]);
  });

  test('a corner that no guide can serve is told, and the others keep theirs', () => {
    const near = placeAt(first, { hand: 'left', end: 'bottom' }, { fromSide: 3 });
    const good = placeAt(first, { hand: 'right', end: 'bottom' });
    const planned = plan([fasteningOf(first, [near, good])]);
    expect(ids(planned)).toEqual(['G1R right']);
    expect(planned.findings.map(({ severity, code }) => `${severity} ${code}`)).toEqual([
      'warning jigs/no-guide',
    ]);
    expect(planned.findings[0]?.message).toMatch(
      /^No drill guide can be made for the left bottom corner of A \/ top: a bore comes within .* Mark its screw from the drawer's template\.$/,
    );
  });

  test('the depth stop is the guide and the screw, along the axis', () => {
    const planned = plan([fasteningOf(first, corners(first, { lean: LEAN }))]);
    for (const { drilling } of planned.value.jigs) {
      for (const { stop, depth } of drilling?.bores ?? []) {
        expect(depth).toBeCloseTo(SCREW_LENGTH, 9);
        expect(stop).toBeCloseTo(18 / Math.cos((15 * Math.PI) / 180) + SCREW_LENGTH, 9);
      }
    }
  });

  test('no screw, no guide', () => {
    const none = { ...fasteningOf(first, []), screw: null, holes: null };
    expect(plan([none]).value).toEqual({ jigs: [], uses: [] });
  });

  test('a bushing makes the bore as wide as it is', () => {
    const { fastening } = STANDARD;
    const bushing = { value: 6.35, source: 'a test' };
    const standard = {
      ...STANDARD,
      fastening: { ...fastening, guide: { ...fastening.guide, bushing } },
    };
    const planned = planAids(
      [fasteningOf(first, corners(first, { lean: LEAN }))],
      standard,
      laser,
      undefined,
      1,
    );
    expect(planned.value.jigs.map((jig) => jig.drilling?.bores[0]?.diameter)).toEqual([
      6.35, 6.35, 6.35, 6.35,
    ]);
    expect(planned.value.jigs[0]?.drilling?.words.join(' ')).toMatch(/Press bushings of 1\/4"/);
  });
});

const pull = (fit: DrawerFit, xs: readonly number[], sort = 'bar') => ({
  ...fasteningOf({ ...fit, drawer: { ...fit.drawer, pullChoice: { sort } } }, [], {
    pullHoles: { diameter: 5, centers: xs.map((x) => ({ x, y: fit.frontH / 2 })) },
  }),
});

describe('planAids: what is worth a guide', () => {
  const corner = { hand: 'right', end: 'bottom' } as const;
  const row = (fit: DrawerFit, sides: readonly number[], options: PlaceOptions = {}) =>
    fasteningOf(
      fit,
      sides.map((fromSide, index) => placeAt(fit, corner, { fromSide, index, ...options })),
    );

  test('a corner that needs only the first bores of another guide uses that one, and is told which', () => {
    const planned = plan([row(first, [38.1]), row(third, [38.1, 165.1])]);
    expect(ids(planned)).toEqual(['G1R right']);
    expect(planned.value.uses.map(({ places, words }) => [places.length, words])).toEqual([
      [1, ['Of G1R, use bore 1 only.']],
      [2, []],
    ]);
  });

  test('straight bores that fewer than three drawers use get no guide; leaning ones always do', () => {
    const usual = (fastenings: readonly Fastening[]) => ids(planAids(fastenings, STANDARD, laser));
    const straight = [first, second, third].map((fit) => row(fit, [38.1]));
    expect(usual(straight.slice(1))).toEqual([]);
    expect(usual(straight)).toEqual(['G1R right']);
    expect(usual([row(first, [38.1], { lean: LEAN })])).toEqual(['G1R right']);
  });
});

describe('planAids: pull templates', () => {
  test('one pull within reach: one left template with both holes of it', () => {
    const middle = first.frontW / 2;
    const planned = plan([pull(first, [middle - 48, middle + 48])]);
    expect(planned.findings).toEqual([]);
    expect(uses(planned)).toEqual(['A / top: pull T1L']);
    expect(planned.value.jigs[0]?.drilling?.bores.map(({ at }) => at.x)).toEqual([
      expect.closeTo(middle - 48, 9),
      expect.closeTo(middle + 48, 9),
    ]);
  });

  test('one pull out of reach of the side edge: a template on the centre line, shared by all such fronts', () => {
    const wide = { ...third, frontW: 860 };
    const wider = { ...third, frontW: 900 };
    const planned = plan([pull(wide, [382, 478]), pull(wider, [402, 498])]);
    expect(planned.findings).toEqual([]);
    expect(ids(planned)).toEqual(['T1 null']);
    expect(uses(planned)).toHaveLength(2);
    expect(planned.value.jigs[0]?.drilling?.bores.map(({ at }) => at.x)).toEqual([-48, 48]);
    expect(planned.value.jigs[0]?.drilling?.words.join(' ')).toMatch(/pencil the centre line/);
  });

  test('two pulls: a left and a right template of one number, each with the holes of its own pull', () => {
    const wide = { ...third, frontW: 800 };
    const planned = plan([pull(wide, [152, 248, 552, 648])]);
    expect(ids(planned)).toEqual(['T1L left', 'T1R right']);
    for (const { drilling, hand } of planned.value.jigs) {
      const xs = (drilling?.bores ?? []).map(({ at }) => (hand === 'left' ? at.x : -at.x));
      expect(xs).toEqual([152, 248]);
    }
  });

  test('two fronts of one width share a template, another width has its own; a knob has one hole', () => {
    const planned = plan([
      pull(first, [first.frontW / 2], 'knob'),
      pull(first, [first.frontW / 2], 'knob'),
      pull(second, [second.frontW / 2], 'knob'),
    ]);
    expect(ids(planned)).toEqual(['T1L left', 'T2L left']);
  });

  test('a front that is too thin for a lip is told', () => {
    const planned = plan([pull({ ...first, frontThickness: 6 }, [200])]);
    expect(planned.value.jigs).toEqual([]);
    expect(planned.findings.map(({ message }) => message)).toEqual([
      "No pull template can be made for A / top: a sheet of 6 mm is too thick for a lip behind a front of 6 mm, which must stay 1 mm clear of the bench. Mark its pull's holes from the drawer's paper template.",
    ]);
  });
});

describe('the parts of aids', () => {
  test('have unique ids, one copy of each layer, no overhang, and the bores of their jig', () => {
    const fit = oneFit();
    const middle = fit.frontW / 2;
    const planned = plan([
      fasteningOf(fit, corners(fit, { lean: LEAN }), {
        pullHoles: { diameter: 5, centers: [{ x: middle, y: fit.frontH / 2 }] },
      }),
    ]);
    const { value, findings } = partsOf(planned.value.jigs, laser.machine, STROKE_FONT);
    expect(findings).toEqual([]);
    expect(new Set(value.map(({ id }) => id)).size).toBe(value.length);
    for (const part of value) {
      expect(part.sets).toEqual([]);
      expect(part.drills?.length).toBe(1);
      if (part.id.includes('layer-')) expect(part.copies).toBe(1);
    }
    expect(value.find(({ id }) => id === 'G1L-layer-2')?.title).toBe('corner drill guide G1L, layer 2');
  });
});
