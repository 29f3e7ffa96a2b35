import { describe, expect, test } from 'vitest';
import { readOrderCsv, type CsvOptions } from '../../core/order/read-csv.ts';
import type { Drawer } from '../../core/order/types.ts';
import { readStandard } from '../rules/read-standard.ts';

const standard = readStandard('face-frame-undermount.json');
const OPTIONS: CsvOptions = { file: 'quay.csv', name: 'quay', unit: 'in', standard };

const read = (lines: readonly string[], options: Partial<CsvOptions> = {}): readonly Drawer[] => {
  const { value, findings } = readOrderCsv(lines.join('\n'), { ...OPTIONS, ...options });
  expect(findings).toEqual([]);
  return value.drawers;
};

const HEAD = 'cabinet,drawer,qty,style,opening_w,opening_h';

describe('readOrderCsv reads', () => {
  test('every column, in any order, case and spelling of its name', () => {
    const [drawer] = read([
      'NOTE;Pull;box front;Box-Side;SPECIES;front_thickness;Front;Box D;BOX_H;box_w;front h;Front W;bottom;top;right;left;Position;Column;Cabinet Kind;Room; Opening  H ;opening_w;Style;QTY;Drawer;cabinet',
      'by the door;Cup 64 mm X1, brushed;5/8;1/2;Black CHERRY;13/16;5-Piece 2-1/4 Thinnest 1/2 MITER rails 2;21;5;15;7;16;cover bottom-rail;inset 1/8;lap 1/2;share shared-stile gap 1/8;middle;1;DESK base;Hall;6;15-3/4;Full OVERLAY;3;top;B1',
    ]);
    expect(drawer).toEqual({
      row: 2,
      room: 'Hall',
      cabinet: 'B1',
      cabinetKind: 'desk base',
      column: 1,
      position: 'middle',
      first: true,
      last: true,
      drawer: 'top',
      qty: 3,
      style: 'full overlay',
      openingW: 400.05,
      openingH: 152.4,
      edges: {
        left: { kind: 'share', member: 'shared-stile', gap: 3.175 },
        right: { kind: 'lap', overlay: 12.7 },
        top: { kind: 'inset', gap: 3.175 },
        bottom: { kind: 'cover', member: 'bottom-rail', reveal: 0 },
      },
      frontW: 406.4,
      frontH: 177.8,
      boxW: 381,
      boxH: 127,
      boxD: 533.4,
      front: { kind: 'five-piece', memberWidth: 57.15, railWidth: 50.8, joint: 'mitre', thinnest: 12.7 },
      frontThickness: 20.6375,
      species: 'black cherry',
      boxSide: 12.7,
      boxFront: 15.875,
      pull: 'Cup 64 mm X1, brushed',
      pullChoice: { sort: 'cup', centers: 64, count: 1 },
      note: 'by the door',
    });
  });

  test('a row of the required columns alone: a slab front, the first column, nothing else given', () => {
    expect(read([HEAD, 'B1,top,1,inset,15-3/4,6'])).toEqual([
      {
        row: 2,
        cabinet: 'B1',
        column: 1,
        position: 'bottom',
        first: true,
        last: true,
        drawer: 'top',
        qty: 1,
        style: 'inset',
        openingW: 400.05,
        openingH: 152.4,
        edges: {},
        front: { kind: 'slab' },
      },
    ]);
  });

  test('the name, date and unit of the order as they are given', () => {
    const { value } = readOrderCsv(`${HEAD}\nB1,top,1,inset,400,"150,5"`, {
      ...OPTIONS,
      unit: 'mm',
      date: '2031-05-20',
    });
    expect({ ...value, drawers: [] }).toEqual({ name: 'quay', date: '2031-05-20', unit: 'mm', drawers: [] });
    expect(value.drawers[0]?.openingH).toBe(150.5);
  });

  test('semicolons, decimal commas, a byte order mark and CRLF', () => {
    const [drawer] = read([
      '\ufeffcabinet;drawer;qty;style;opening_w;opening_h\r',
      'B1;top;1;inset;400,5 mm;150 mm\r',
      '',
    ]);
    expect(drawer?.openingW).toBe(400.5);
    expect(drawer?.openingH).toBe(150);
  });

  test('quoted cells with commas, doubled quotation marks and line breaks, counted as one row', () => {
    const drawers = read([
      `${HEAD},note`,
      '"B1, left","the ""deep"" one",1,inset,"15 3/4""",6","first line\r\nsecond line"'.replace(
        '6","',
        '6,"',
      ),
      'B2,top,1,inset,15 3/4",6″,',
    ]);
    expect(drawers[0]).toMatchObject({
      row: 2,
      cabinet: 'B1, left',
      drawer: 'the "deep" one',
      openingW: 400.05,
      note: 'first line\nsecond line',
    });
    expect(drawers[1]).toMatchObject({ row: 3, openingW: 400.05, openingH: 152.4 });
  });

  test('blank lines and rows of empty cells are skipped and counted', () => {
    const drawers = read([HEAD, '', 'B1,top,1,inset,15,6', ',,,,,', 'B1,bottom,1,inset,15,6,,', '']);
    expect(drawers.map(({ row, drawer }) => [row, drawer])).toEqual([
      [3, 'top'],
      [5, 'bottom'],
    ]);
  });
});

describe('readOrderCsv places a drawer in its stack by the order of the rows', () => {
  const places = (lines: readonly string[]) =>
    read(lines).map(({ drawer, column, position, first, last }) => [drawer, column, position, first, last]);

  test('the first is at the top, the last at the bottom, one alone is a bottom drawer', () => {
    expect(
      places([
        HEAD,
        'B1,a,1,inset,15,6',
        'B1,b,1,inset,15,6',
        'B1,c,1,inset,15,6',
        'B1,d,1,inset,15,6',
        'B2,a,1,inset,15,6',
        'B3,a,1,inset,15,6',
        'B3,b,1,inset,15,6',
      ]),
    ).toEqual([
      ['a', 1, 'top', true, false],
      ['b', 1, 'middle', false, false],
      ['c', 1, 'middle', false, false],
      ['d', 1, 'bottom', false, true],
      ['a', 1, 'bottom', true, true],
      ['a', 1, 'top', true, false],
      ['b', 1, 'bottom', false, true],
    ]);
  });

  test('column by column, also when the rows go across the columns', () => {
    const expected = [
      ['a', 1, 'top', true, false],
      ['b', 2, 'top', true, false],
      ['c', 1, 'bottom', false, true],
      ['d', 2, 'bottom', false, true],
    ];
    const rows = ['B1,a,1,inset,15,6,1', 'B1,b,1,inset,15,6,2', 'B1,c,1,inset,15,6,1', 'B1,d,1,inset,15,6,2'];
    expect(places([`${HEAD},column`, ...rows])).toEqual(expected);
  });

  test('the position column overrides, first and last stay with the rows', () => {
    expect(
      places([`${HEAD},position`, 'B1,a,1,inset,15,6,', 'B1,b,1,inset,15,6,Middle', 'B2,a,1,inset,15,6,TOP']),
    ).toEqual([
      ['a', 1, 'top', true, false],
      ['b', 1, 'middle', false, true],
      ['a', 1, 'top', true, true],
    ]);
  });

  test('cabinets of one name in two rooms are two cabinets', () => {
    expect(
      places([`${HEAD},room`, 'B1,a,1,inset,15,6,Hall', 'B1,a,1,inset,15,6,Loft', 'B1,b,1,inset,15,6,loft']),
    ).toEqual([
      ['a', 1, 'bottom', true, true],
      ['a', 1, 'top', true, false],
      ['b', 1, 'bottom', false, true],
    ]);
  });
});
