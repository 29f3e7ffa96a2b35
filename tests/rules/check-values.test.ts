import { describe, expect, test } from 'vitest';
import type { Drawer, Edge } from '../../core/order/types.ts';
import type { ResolvedRules } from '../../core/rules/resolved.ts';
import { resolveRules } from '../../core/rules/resolve.ts';
import { drawer } from './drawers.ts';
import { readStandard } from './read-standard.ts';

const standard = readStandard('face-frame-undermount.json');

const INCH = 25.4;

/** Where a drawer stands in a column of three. */
const TOP = { position: 'top', first: true, last: false } as const;
const MIDDLE = { position: 'middle', first: false, last: false } as const;
const BOTTOM = { position: 'bottom', first: false, last: true } as const;

const rulesOf = (given: Partial<Drawer>, columns = 1): ResolvedRules => {
  const { value, findings } = resolveRules(drawer(given), standard, columns);
  expect(findings).toEqual([]);
  if (value === null) throw new Error('no rules');
  return value;
};

/** Overhangs in inches, by the sums of the design, apart from those of `core/fit`. */
const overhang = (rules: ResolvedRules, edge: Exclude<Edge, 'top'>): number => {
  const lift = rules.lift.value + rules.startLow.value;
  const clearance = edge === 'bottom' ? lift : rules.runningClearance.value;
  return (clearance + rules.edges[edge].overlay) / INCH;
};

interface Case {
  readonly name: string;
  readonly given: Partial<Drawer>;
  readonly bottom: number;
  readonly side: number;
}

const cases: readonly Case[] = [
  { name: 'inset, gaps of 3/32, start low 3/32', given: { style: 'inset' }, bottom: 1 / 2, side: 3 / 32 },
  {
    name: 'full overlay, bottom drawer',
    given: { style: 'full overlay', ...BOTTOM },
    bottom: 2,
    side: 1 + 7 / 16,
  },
  {
    name: 'full overlay, bottom drawer of a desk base',
    given: { style: 'full overlay', cabinetKind: 'desk base', ...BOTTOM },
    bottom: 1 + 3 / 4,
    side: 1 + 7 / 16,
  },
  {
    name: 'full overlay, a drawer in the middle',
    given: { style: 'full overlay', ...MIDDLE },
    bottom: 11 / 16,
    side: 1 + 7 / 16,
  },
  {
    name: 'full overlay, the drawer at the top',
    given: { style: 'full overlay', ...TOP },
    bottom: 11 / 16,
    side: 1 + 7 / 16,
  },
  { name: 'partial overlay', given: { style: 'partial overlay', ...BOTTOM }, bottom: 1, side: 11 / 16 },
  {
    name: 'partial overlay, in the middle',
    given: { style: 'partial overlay', ...MIDDLE },
    bottom: 1,
    side: 11 / 16,
  },
];

describe('resolveRules with the default standard gives the overhangs that a shop knows', () => {
  test.each(cases)('$name', ({ given, bottom, side }) => {
    const rules = rulesOf(given);
    expect(overhang(rules, 'bottom')).toBeCloseTo(bottom, 9);
    expect(overhang(rules, 'left')).toBeCloseTo(side, 9);
    expect(overhang(rules, 'right')).toBeCloseTo(side, 9);
  });

  test('full overlay, a stile of 1 1/2 shared by two fronts 1/8 apart: 7/8 on the shared side', () => {
    const left = rulesOf({ style: 'full overlay', column: 1 }, 2);
    const right = rulesOf({ style: 'full overlay', column: 2 }, 2);
    expect(overhang(left, 'right')).toBeCloseTo(7 / 8, 9);
    expect(left.edges.right.overlay / INCH).toBeCloseTo(11 / 16, 9);
    expect(overhang(left, 'left')).toBeCloseTo(1 + 7 / 16, 9);
    expect(overhang(right, 'left')).toBeCloseTo(7 / 8, 9);
    expect(overhang(right, 'right')).toBeCloseTo(1 + 7 / 16, 9);
  });

  test('full overlay, a column between two others shares both of its stiles', () => {
    const middle = rulesOf({ style: 'full overlay', column: 2 }, 3);
    expect(overhang(middle, 'left')).toBeCloseTo(7 / 8, 9);
    expect(overhang(middle, 'right')).toBeCloseTo(7 / 8, 9);
  });

  test('full overlay, the top edge of a front below another laps the rail by 1 1/4', () => {
    for (const place of [MIDDLE, BOTTOM]) {
      expect(rulesOf({ style: 'full overlay', ...place }).edges.top.overlay / INCH).toBeCloseTo(1.25, 9);
    }
  });

  test('partial overlay at a shared stile stays 1/2', () => {
    const rules = rulesOf({ style: 'partial overlay', column: 1 }, 2);
    expect(rules.edges.right.situation).toBe('shared');
    expect(rules.edges.right.overlay / INCH).toBeCloseTo(1 / 2, 9);
  });

  test('a box is 3/8 narrower and 1 lower than its opening', () => {
    const rules = rulesOf({ style: 'inset' });
    expect((2 * rules.runningClearance.value) / INCH).toBeCloseTo(3 / 8, 9);
    expect((rules.lift.value + rules.topClearance.value) / INCH).toBeCloseTo(1, 9);
  });

  test('an inset front with a back bevel states its 3 degrees', () => {
    expect(rulesOf({ style: 'inset bevelled' }).backBevel.value).toBe(3);
    expect(rulesOf({ style: 'inset' }).backBevel.value).toBe(0);
  });
});

describe.each(['face-frame-undermount.json', 'face-frame-side-mount.json', 'frameless-undermount.json'])(
  'resolveRules with %s leaves a gap between neighbours',
  (file) => {
    const own = readStandard(file);
    const kinds = [undefined, ...Object.keys(own.cabinetKinds)];

    test.each(own.styles.map((style) => style.name))('%s', (style) => {
      for (const cabinetKind of kinds) {
        const given = { style, ...(cabinetKind === undefined ? {} : { cabinetKind }) };
        const at = (place: Partial<Drawer>): ResolvedRules => {
          const { value } = resolveRules(drawer({ ...given, ...place }), own, 2);
          if (value === null) throw new Error('no rules');
          return value;
        };
        for (const [upper, lower] of [
          [TOP, MIDDLE],
          [MIDDLE, MIDDLE],
          [MIDDLE, BOTTOM],
        ]) {
          const above = at({ ...upper });
          const below = at({ ...lower });
          const gap = above.members['mid-rail'].value - above.edges.bottom.overlay - below.edges.top.overlay;
          // Also while the upper front still stands low.
          expect(gap - above.startLow.value).toBeGreaterThan(0.9);
        }
        const left = at({ column: 1 });
        const right = at({ column: 2 });
        const between =
          left.members['shared-stile'].value - left.edges.right.overlay - right.edges.left.overlay;
        expect(between).toBeGreaterThan(0.9);
      }
    });
  },
);
