import { describe, expect, test } from 'vitest';
import type { ShopStandard } from '../../core/rules/types.ts';
import { resolveRules } from '../../core/rules/resolve.ts';
import { situationOf } from '../../core/rules/situation.ts';
import { drawer } from './drawers.ts';
import { readStandard } from './read-standard.ts';

const standard = readStandard('face-frame-undermount.json');
const NO_SOURCE = 'common practice, no source';

describe('situationOf', () => {
  const place = (column: number, position: 'top' | 'middle' | 'bottom', first: boolean) => ({
    column,
    position,
    first,
  });

  test.each([
    ['left', place(1, 'bottom', true), 1, 'outer'],
    ['right', place(1, 'bottom', true), 1, 'outer'],
    ['left', place(1, 'bottom', true), 2, 'outer'],
    ['right', place(1, 'bottom', true), 2, 'shared'],
    ['left', place(2, 'bottom', true), 2, 'shared'],
    ['right', place(2, 'bottom', true), 2, 'outer'],
    ['right', place(2, 'bottom', true), 3, 'shared'],
    ['top', place(1, 'top', true), 1, 'outer'],
    ['top', place(1, 'middle', false), 1, 'shared'],
    ['top', place(1, 'bottom', false), 1, 'shared'],
    ['top', place(1, 'bottom', true), 1, 'outer'],
    ['top', place(1, 'middle', true), 1, 'outer'],
    ['bottom', place(1, 'bottom', true), 1, 'outer'],
    ['bottom', place(1, 'middle', false), 1, 'shared'],
    ['bottom', place(1, 'top', true), 1, 'shared'],
  ] as const)('situationOf(%s, %j, %d columns) is %s', (edge, where, columns, expected) => {
    expect(situationOf(edge, where, columns)).toBe(expected);
  });
});

describe('resolveRules', () => {
  test('an edge cell of the order takes the place of the edge of the style, and says so', () => {
    const { value } = resolveRules(
      drawer({
        style: 'full overlay',
        row: 7,
        edges: { left: { kind: 'cover', member: 'stile', reveal: 3 } },
      }),
      standard,
      1,
    );
    expect(value?.edges.left).toEqual({
      condition: { kind: 'cover', member: 38.1, reveal: 3 },
      overlay: 35.1,
      source: 'order, row 7',
      situation: 'outer',
    });
    expect(value?.edges.right).toEqual({
      condition: { kind: 'lap', overlay: 31.75 },
      overlay: 31.75,
      source: NO_SOURCE,
      situation: 'outer',
    });
  });

  test('an order cell at the bottom keeps the start-low allowance of the situation of the style', () => {
    const given = { style: 'full overlay', edges: { bottom: { kind: 'lap', overlay: 5 } as const } };
    const top = { position: 'top', first: true, last: false } as const;
    expect(resolveRules(drawer({ ...given, ...top }), standard, 1).value?.startLow.value).toBe(1.5875);
    expect(resolveRules(drawer(given), standard, 1).value?.startLow.value).toBe(0);
  });

  test('a cabinet kind changes its own members and slide, and nothing else', () => {
    const adjusters = standard.slides['undermount']?.adjusters;
    if (adjusters === undefined) throw new Error('no slide');
    const own: ShopStandard = {
      ...standard,
      slides: {
        ...standard.slides,
        heavy: {
          runningClearance: { value: 12.7, source: 'sheet' },
          lift: { value: 10, source: 'sheet' },
          topClearance: { value: 9, source: 'sheet' },
          sideMember: { value: 45, source: 'sheet' },
          widthTolerance: { value: 1, source: 'sheet' },
          adjusters,
        },
      },
      cabinetKinds: { File: { members: { stile: { value: 50, source: 'drawing' } }, slide: 'heavy' } },
    };
    const { value, findings } = resolveRules(drawer({ cabinetKind: 'file' }), own, 1);
    expect(findings).toEqual([]);
    expect(value?.slideName).toBe('heavy');
    expect(value?.runningClearance).toEqual({ value: 12.7, source: 'sheet' });
    expect(value?.lift.value).toBe(10);
    expect(value?.topClearance.value).toBe(9);
    expect(value?.members).toEqual({ ...standard.members, stile: { value: 50, source: 'drawing' } });
    expect(resolveRules(drawer(), own, 1).value?.slideName).toBe('undermount');
  });

  test('a style and kind are found in any case', () => {
    const { value } = resolveRules(drawer({ style: 'FULL Overlay', cabinetKind: 'Desk Base' }), standard, 1);
    expect(value?.edges.bottom.condition).toEqual({ kind: 'cover', member: 31.75, reveal: 0 });
  });

  test('a drawer that names what the standard does not have gets no rules, and a finding for each name', () => {
    const { value, findings } = resolveRules(
      drawer({ style: 'flush', cabinetKind: 'toString' }),
      standard,
      1,
    );
    expect(value).toBeNull();
    expect(findings).toEqual([
      {
        code: 'rules/style-unknown',
        severity: 'error',
        message:
          'Drawer B1 / one has the style “flush”, which the shop standard “Face frame, undermount slides” does not have; it has inset, full overlay, partial overlay, inset bevelled.',
        at: { row: 2, drawer: 'B1 / one' },
        values: { name: 'flush' },
      },
      {
        code: 'rules/cabinet-kind-unknown',
        severity: 'error',
        message:
          'Drawer B1 / one has the cabinet kind “toString”, which the shop standard “Face frame, undermount slides” does not have; it has desk base.',
        at: { row: 2, drawer: 'B1 / one' },
        values: { name: 'toString' },
      },
    ]);
  });

  test('a slide that the standard does not have, also one with the name of a built-in, is a finding', () => {
    const { value, findings } = resolveRules(drawer({ row: 0 }), { ...standard, slide: 'constructor' }, 1);
    expect(value).toBeNull();
    expect(findings.map(({ code, at }) => [code, at])).toEqual([
      ['rules/slide-unknown', { drawer: 'B1 / one' }],
    ]);
  });

  test('a reveal that is wider than its member is an error', () => {
    const edges = { bottom: { kind: 'cover', member: 'bottom-rail', reveal: 50.8 } as const };
    const { findings } = resolveRules(drawer({ edges }), standard, 1);
    expect(findings).toEqual([
      {
        code: 'rules/reveal-over-member',
        severity: 'error',
        message:
          'Drawer B1 / one: its bottom edge covers a member of 1 1/2" but for a reveal of 2", which is more than the member; write a smaller reveal, or inset and a gap.',
        at: { row: 2, drawer: 'B1 / one' },
        values: { edge: 'bottom', member: 38.1, reveal: 50.8 },
      },
    ]);
  });
});
