import { describe, expect, test } from 'vitest';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { drawerName } from '../../core/fit/drawer-name.ts';
import type { Registration } from '../../core/jigs/plan-types.ts';
import { planJigs } from '../../core/jigs/plan.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { readStandard } from '../rules/read-standard.ts';
import { contextOf } from './setups.ts';

const standard = readStandard('face-frame-undermount.json');

function plan(
  registration: Registration,
  machine: Parameters<typeof contextOf>[0],
  ...lines: readonly string[]
) {
  const text = ['cabinet,column,drawer,qty,style,opening_w,opening_h,front_thickness', ...lines].join('\n');
  const order = readOrderCsv(text, { file: 'plan.csv', name: 'plan', unit: 'in', standard });
  expect(order.findings).toEqual([]);
  const fits = fitOrder(order.value, standard);
  expect(fits.findings).toEqual([]);
  return { fits: fits.value, ...planJigs(fits.value, registration, contextOf(machine)) };
}

const ids = ({ value }: ReturnType<typeof plan>) => value.jigs.map(({ id, kind }) => `${id} ${kind}`);

const uses = ({ value }: ReturnType<typeof plan>) =>
  value.uses.map(({ fit, edge, jig }) => `${drawerName(fit.drawer)}: ${edge} ${jig.id}`);

const STACK = [
  'A,1,top,1,full overlay,18,5,',
  'A,1,middle,1,full overlay,18,8,',
  'A,1,bottom,1,full overlay,18,10,',
];

describe('planJigs', () => {
  test('makes one jig for each distinct overhang, the same one once', () => {
    const planned = plan('edge', 'laser-6', ...STACK, 'B,1,only,4,full overlay,24,10,');
    expect(ids(planned)).toEqual(['B1 bottom fence', 'B2 bottom fence', 'S1 side spacer']);
    expect(uses(planned)).toEqual([
      'A / top: bottom B1',
      'A / top: left S1',
      'A / middle: bottom B1',
      'A / middle: left S1',
      'A / bottom: bottom B2',
      'A / bottom: left S1',
      'B / only: bottom B2',
      'B / only: left S1',
    ]);
    expect(planned.findings).toEqual([]);
  });

  test('sets each drawer from the side whose overhang most drawers share', () => {
    const planned = plan(
      'edge',
      'laser-6',
      'A,1,left,1,full overlay,18,8,',
      'A,2,right,1,full overlay,18,8,',
      'B,1,only,1,full overlay,18,8,',
    );
    // The outer overhang serves all three; the shared stile's 7/8 in needs no jig.
    expect(ids(planned)).toEqual(['B1 bottom fence', 'S1 side spacer']);
    expect(uses(planned).filter((use) => use.includes('S1'))).toEqual([
      'A / left: left S1',
      'A / right: right S1',
      'B / only: left S1',
    ]);
  });

  test('puts two side overhangs on one block, turned over for the other', () => {
    const planned = plan(
      'edge',
      'laser-6',
      'A,1,only,1,full overlay,18,8,',
      'B,1,only,1,partial overlay,18,8,',
    );
    expect(ids(planned)).toEqual(['B1 bottom fence', 'B2 bottom fence', 'S1 side spacer']);
    const block = planned.value.jigs.at(-1);
    expect(block?.seats.map(({ sets }) => sets[0]?.overhang)).toEqual([
      expect.closeTo(36.5125, 9),
      expect.closeTo(17.4625, 9),
    ]);
  });

  test('takes a step profile where the overhang is too narrow for a plate', () => {
    const planned = plan('edge', 'laser-6', 'A,1,only,1,inset,18,6,');
    expect(ids(planned)).toEqual(['B1 bottom fence', 'P1 step profile']);
  });

  test('with corners: a handed pair for each distinct set, edge jigs where no corner fence can serve', () => {
    const planned = plan('corner', 'laser-6', ...STACK, 'C,1,low,1,full overlay,18,2,');
    expect(ids(planned)).toEqual([
      'C1L corner fence',
      'C1R corner fence',
      'C2L corner fence',
      'C2R corner fence',
    ]);
    expect(planned.value.jigs.map(({ hand }) => hand)).toEqual(['left', 'right', 'left', 'right']);
    const narrow = plan('corner', 'laser-6', 'C,1,low,1,inset,18,2 1/2,');
    expect(ids(narrow)).toEqual(['B1 bottom fence', 'P1 step profile']);
  });

  test('makes separate jigs for bevelled edges of different thickness, and one for square edges', () => {
    const bevelled = plan(
      'edge',
      'laser-6',
      'A,1,only,1,inset bevelled,18,6,3/4',
      'B,1,only,1,inset bevelled,18,6,7/8',
    );
    expect(ids(bevelled)).toEqual([
      'B1 bottom fence',
      'B2 bottom fence',
      'P1 step profile',
      'P2 step profile',
    ]);
    const square = plan('edge', 'laser-6', 'A,1,only,1,inset,18,6,3/4', 'B,1,only,1,inset,18,6,7/8');
    expect(ids(square)).toEqual(['B1 bottom fence', 'P1 step profile']);
  });

  test('says so when no jig can be built', () => {
    const planned = plan('edge', 'router', 'A,1,only,1,full overlay,18,8,1/4');
    expect(planned.findings.map(({ severity, code }) => `${severity} ${code}`)).toEqual([
      'error jigs/none',
      'error jigs/none',
    ]);
    expect(planned.findings[0]?.message).toMatch(
      /^no jig can set the bottom overhang of 50\.8 mm of A \/ only: a sheet of 12\.7 mm is too thick for a lip behind a front of 6\.35 mm/,
    );
  });

  test('serves every drawer at its bottom and at one side', () => {
    const planned = plan('edge', 'laser-3', ...STACK, 'D,1,only,1,inset,18,6,');
    for (const fit of planned.fits) {
      const edges = planned.value.uses.filter((use) => use.fit === fit).map(({ edge }) => edge);
      expect(edges).toHaveLength(2);
      expect(edges).toContain('bottom');
    }
  });
});

describe('planJigs keeps apart what one jig cannot serve', () => {
  test('a thin front gets a step profile, and the others keep their fence', () => {
    const planned = plan(
      'edge',
      'laser-6',
      'A,1,only,1,full overlay,18,8,1/4',
      'B,1,only,1,full overlay,18,8,',
      'C,1,only,1,full overlay,18,8,',
    );
    expect(planned.findings).toEqual([]);
    expect(uses(planned)).toEqual([
      'A / only: bottom P1',
      'A / only: left P2',
      'B / only: bottom B1',
      'B / only: left S1',
      'C / only: bottom B1',
      'C / only: left S1',
    ]);
  });

  test('a refusal names only the drawers that it is about', () => {
    const planned = plan(
      'edge',
      'router',
      'A,1,only,1,full overlay,18,8,1/4',
      'B,1,only,1,full overlay,18,8,',
    );
    expect(planned.findings.map(({ message }) => message.includes('B / only'))).toEqual([false, false]);
  });

  test('overhangs that differ by float noise share a jig, however they were worked out', () => {
    const planned = plan(
      'edge',
      'laser-6',
      'A,1,only,1,full overlay,16 1/2,8,',
      'B,1,only,1,full overlay,28 1/4,8,',
      'C,1,only,1,full overlay,14 33/64,8,',
      'D,1,only,1,full overlay,17 3/128,8,',
    );
    expect(ids(planned)).toEqual(['B1 bottom fence', 'S1 side spacer']);
  });
});
