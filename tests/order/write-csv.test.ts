import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { Order } from '../../core/order/types.ts';
import { writeOrderCsv } from '../../core/order/write-csv.ts';
import { readStandard } from '../rules/read-standard.ts';
import { anyOrder } from './arbitraries.ts';

const SEED = 20_310_525;
const standard = readStandard('face-frame-undermount.json');
const styles = standard.styles.map((style) => style.name);

const VOCABULARY = { species: Object.keys(standard.species), pulls: standard.pulls };

const readBack = (order: Order, unit = order.unit) =>
  readOrderCsv(writeOrderCsv(order), {
    file: 'written.csv',
    name: order.name,
    unit,
    ...(order.date === undefined ? {} : { date: order.date }),
    standard,
  });

describe('writeOrderCsv', () => {
  test('writes lengths with their unit, and leaves out the columns that no drawer uses', () => {
    const order: Order = {
      name: 'quay',
      unit: 'in',
      drawers: [
        {
          row: 2,
          cabinet: 'B1, left',
          column: 1,
          position: 'bottom',
          first: true,
          last: true,
          drawer: 'a "deep" one',
          qty: 2,
          style: 'inset',
          openingW: 400.05,
          openingH: 152.4,
          edges: { left: { kind: 'cover', member: 'stile', reveal: 1.5875 } },
          front: { kind: 'five-piece', memberWidth: 57.15 },
        },
      ],
    };
    expect(writeOrderCsv(order)).toBe(
      [
        'cabinet,drawer,qty,style,opening_w,opening_h,column,position,left,front',
        '"B1, left","a ""deep"" one",2,inset,15-3/4 in,6 in,1,bottom,cover stile reveal 1/16 in,five-piece 2-1/4 in',
        '',
      ].join('\r\n'),
    );
  });

  test('an order without drawers has the required columns', () => {
    expect(writeOrderCsv({ name: 'none', unit: 'mm', drawers: [] })).toBe(
      'cabinet,drawer,qty,style,opening_w,opening_h\r\n',
    );
  });

  test('readOrderCsv(writeOrderCsv(order)) is the order, without findings', () => {
    fc.assert(
      fc.property(anyOrder(styles, ['desk base'], VOCABULARY), (order) => {
        const { value, findings } = readBack(order);
        expect(findings).toEqual([]);
        expect(value).toEqual(order);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  test('readOrderCsv(writeOrderCsv(order)) gives the same drawers when bare numbers are read in the other unit', () => {
    fc.assert(
      fc.property(anyOrder(styles, ['desk base'], VOCABULARY), (order) => {
        expect(readBack(order, order.unit === 'in' ? 'mm' : 'in').value.drawers).toEqual(order.drawers);
      }),
      { seed: SEED + 1, numRuns: 200 },
    );
  });
});
