import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { cabinetKey, columnCounts } from '../../core/order/cabinets.ts';
import type { Drawer } from '../../core/order/types.ts';
import type { ResolvedRules } from '../../core/rules/resolved.ts';
import { resolveRules } from '../../core/rules/resolve.ts';
import { readStandard } from '../rules/read-standard.ts';

const orders = new URL('../../assets/orders/', import.meta.url);

const read = (file: string, standardFile: string) => {
  const standard = readStandard(standardFile);
  const text = readFileSync(new URL(file, orders), 'utf8');
  return {
    standard,
    ...readOrderCsv(text, { file, name: file, unit: standard.unit, standard }),
  };
};

describe.each([
  ['harbor-library.csv', 'face-frame-undermount.json', 30],
  ['boathouse-frameless.csv', 'frameless-undermount.json', 12],
])('readOrderCsv(%s)', (file, standardFile, least) => {
  const { value, findings, standard } = read(file, standardFile);
  const counts = columnCounts(value.drawers);

  test('has no findings, and enough drawers to show the program', () => {
    expect(findings).toEqual([]);
    expect(value.drawers.length).toBeGreaterThanOrEqual(least);
  });

  test('uses every style of the standard', () => {
    const used = new Set(value.drawers.map((drawer) => drawer.style));
    expect([...used].sort()).toEqual(standard.styles.map((style) => style.name).sort());
  });

  test('resolveRules finds all that each drawer names, and a box of at least 50 mm fits its opening', () => {
    for (const drawer of value.drawers) {
      const rules = resolveRules(drawer, standard, counts.get(cabinetKey(drawer)) ?? 0);
      expect(rules.findings).toEqual([]);
      if (rules.value === null) throw new Error('no rules');
      const height = drawer.openingH - rules.value.lift.value - rules.value.topClearance.value;
      expect(height).toBeGreaterThan(50);
    }
  });
});

describe('the sizes of harbor-library.csv', () => {
  const { value, standard } = read('harbor-library.csv', 'face-frame-undermount.json');
  const counts = columnCounts(value.drawers);
  const rulesOf = (drawer: Drawer): ResolvedRules => {
    const rules = resolveRules(drawer, standard, counts.get(cabinetKey(drawer)) ?? 0).value;
    if (rules === null) throw new Error('no rules');
    return rules;
  };

  test('fronts one above the other leave a gap of 1/16 or more, also while the upper one stands low', () => {
    const pairs = value.drawers.flatMap((upper, index) => {
      const lower = value.drawers[index + 1];
      const stacked =
        lower !== undefined && cabinetKey(lower) === cabinetKey(upper) && lower.column === upper.column;
      return stacked ? [[rulesOf(upper), rulesOf(lower)] as const] : [];
    });
    expect(pairs.length).toBeGreaterThan(15);
    for (const [upper, lower] of pairs) {
      const gap = upper.members['mid-rail'].value - upper.edges.bottom.overlay - lower.edges.top.overlay;
      expect(gap - upper.startLow.value).toBeGreaterThan(1.5);
    }
  });

  test('given boxes and fronts are what the standard derives, so that the demo shows no warning', () => {
    let given = 0;
    for (const drawer of value.drawers) {
      const { edges, runningClearance, lift, topClearance } = rulesOf(drawer);
      const derived = {
        boxW: drawer.openingW - 2 * runningClearance.value,
        boxH: drawer.openingH - lift.value - topClearance.value,
        frontW: drawer.openingW + edges.left.overlay + edges.right.overlay,
        frontH: drawer.openingH + edges.top.overlay + edges.bottom.overlay,
      };
      for (const size of ['boxW', 'boxH', 'frontW', 'frontH'] as const) {
        const own = drawer[size];
        if (own === undefined) continue;
        given += 1;
        expect(own, `${drawer.cabinet} ${drawer.drawer} ${size}`).toBeCloseTo(derived[size], 9);
      }
    }
    expect(given).toBeGreaterThan(20);
  });
});

describe('readOrderCsv(faulty.csv)', () => {
  const { value, findings } = read('faulty.csv', 'face-frame-undermount.json');

  test('names every deliberate fault at once', () => {
    expect(findings.map(({ code, at }) => `${at.row} ${at.column ?? ''} ${code}`)).toEqual([
      '1 colour order/column-unknown',
      '3 opening_w order/length',
      '4 style order/style',
      '4 opening_h order/length',
      '5 qty order/qty',
      '5 opening_w order/length',
      '6 left order/edge',
      '6 drawer order/drawer-duplicate',
      '7 cabinet_kind order/cabinet-kind',
      '7 bottom order/edge',
      '8 cabinet order/cabinet-split',
      '9 opening_h order/length',
      '9 front order/front',
      '10 box_w order/length',
      '10 column order/column-gap',
      '11 drawer order/required',
      '12 opening_w order/length',
      '12 opening_h order/length',
      '13  order/cells',
      '14  order/quote',
      '15 qty order/qty',
      '15 opening_w order/length',
      '15 opening_h order/length',
      '15 front order/front',
    ]);
    expect(value.drawers.map((drawer) => drawer.row)).toEqual([2]);
  });
});
