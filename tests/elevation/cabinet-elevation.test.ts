import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cabinetElevation } from '../../core/elevation/cabinet-elevation.ts';
import { frontPieces } from '../../core/elevation/front-pieces.ts';
import type { Elevation, GapKind, RowFit } from '../../core/elevation/types.ts';
import { cabinetKey } from '../../core/order/cabinets.ts';
import { readStandard } from '../rules/read-standard.ts';
import { elevationOf, fitsOf } from './elevations.ts';

const INCH = 25.4;
const faceFrame = readStandard('face-frame-undermount.json');
const frameless = readStandard('frameless-undermount.json');
const orderText = (name: string) =>
  readFileSync(new URL(`../../assets/orders/${name}.csv`, import.meta.url), 'utf8');
const harbor = orderText('harbor-library');
const boathouse = orderText('boathouse-frameless');

/** Values of one kind of dimension in a unit, to 1e-9. */
const values = (elevation: Elevation, kind: GapKind, axis: 'x' | 'y', unit = INCH): readonly number[] =>
  elevation.dimensions
    .filter((dimension) => dimension.kind === kind && dimension.axis === axis)
    .map(({ mm }) => Math.round((mm / unit) * 1e9) / 1e9 + 0);

const rectangle = ({ x, y, w, h }: { x: number; y: number; w: number; h: number }, unit = INCH) =>
  [x, y, w, h].map((value) => Math.round((value / unit) * 1e9) / 1e9);

const cabinetsOf = (csv: string, standard: typeof faceFrame, unit: 'in' | 'mm'): readonly RowFit[][] => {
  const groups = new Map<string, RowFit[]>();
  for (const row of fitsOf(csv, standard, unit)) {
    const key = cabinetKey(row.fit.drawer);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()];
};

describe('cabinetElevation', () => {
  test('measures a face frame from outside to outside, its members between the openings', () => {
    const elevation = elevationOf(harbor, 'R1', faceFrame);
    expect(elevation.name).toBe('Reading room / R1');
    // 1-1/2 in members about openings of 15 in by 4-1/2, 5-1/2, 5-3/4 and 6-3/4 in.
    expect(rectangle(elevation.outside)).toEqual([-1.5, -1.5, 18, 30]);
    expect(elevation.members.map((member) => [member.word, ...rectangle(member)])).toEqual([
      ['stile', -1.5, -1.5, 1.5, 30],
      ['stile', 15, -1.5, 1.5, 30],
      ['top rail', 0, -1.5, 15, 1.5],
      ['mid rail', 0, 4.5, 15, 1.5],
      ['mid rail', 0, 11.5, 15, 1.5],
      ['mid rail', 0, 18.75, 15, 1.5],
      ['bottom rail', 0, 27, 15, 1.5],
    ]);
  });

  test('places fronts where they end up, and tells each gap once', () => {
    const elevation = elevationOf(harbor, 'R1', faceFrame);
    expect(elevation.drawers.map(({ front }) => rectangle(front))).toEqual([
      [-1.25, -1.25, 17.5, 5.875],
      [-1.25, 4.75, 17.5, 6.875],
      [-1.25, 11.75, 17.5, 7.125],
      [-1.25, 19, 17.5, 9.5],
    ]);
    expect(values(elevation, 'between', 'y')).toEqual([0.125, 0.125, 0.125]);
    expect(values(elevation, 'reveal', 'x')).toEqual(Array.from({ length: 8 }, () => 0.25));
    // 1/4 in above the top front; the bottom front covers its rail.
    expect(values(elevation, 'reveal', 'y')).toEqual([0.25, 0]);
    expect(elevation.dimensions).toHaveLength(13);
  });

  test('has a shared stile and its gaps between two columns', () => {
    const elevation = elevationOf(harbor, 'R2', faceFrame);
    const shared = elevation.members.filter(({ name }) => name === 'shared-stile');
    expect(shared.map((member) => rectangle(member))).toEqual([[16.5, -1.5, 1.5, 30]]);
    expect(values(elevation, 'between', 'x')).toEqual([0.1875, 0.1875, 0.1875]);
    expect(values(elevation, 'between', 'y')).toEqual([0.125, 0.125, 0.125, 0.125]);
    const between = elevation.dimensions.find(({ kind, axis }) => kind === 'between' && axis === 'x');
    expect(between?.rowIds).toEqual(['row 6', 'row 9']);
    expect(between?.from.x).toBeCloseTo(17.15625 * INCH, 9);
    expect(between?.to.x).toBeCloseTo(17.34375 * INCH, 9);
    expect(elevation.drawers.every(({ qty }) => qty === 2)).toBe(true);
  });

  test('dimensions the gaps of an inset front to its frame, an edge cell in the place of the style', () => {
    const elevation = elevationOf(harbor, 'C2', faceFrame);
    const left = ({ x }: { x: number }) => x;
    const frame = elevation.dimensions.filter(({ kind }) => kind === 'frame');
    expect(frame).toHaveLength(16);
    expect(elevation.dimensions).toHaveLength(16);
    const wide = frame.filter(({ mm }) => Math.abs(mm - INCH / 8) < 1e-9);
    // The two left drawers' left edges, beside the chimney; the opening's edge is at 0.
    expect(wide.map(({ to, rowIds }) => [left(to), rowIds])).toEqual([
      [0, ['row 18']],
      [0, ['row 19']],
    ]);
    expect(frame.filter(({ mm }) => Math.abs(mm - (3 / 32) * INCH) < 1e-9)).toHaveLength(14);
  });

  test('tells the gap to a front that is not drawn, and ends in a mid rail above it', () => {
    const csv =
      'cabinet,drawer,qty,style,opening_w,opening_h,position,bottom\nA,one,1,full overlay,20,5,top,share mid-rail gap 3/16\n';
    const elevation = elevationOf(csv, 'A', faceFrame);
    expect(values(elevation, 'unseen', 'y')).toEqual([0.1875]);
    expect(elevation.members.at(-1)?.word).toBe('mid rail');
  });

  test('of frameless cabinets has panel edges, and no member where fronts meet at a joint', () => {
    const elevation = elevationOf(boathouse, 'B2', frameless, 'mm');
    expect(elevation.members.map(({ word, w, h }) => [word, w, h])).toEqual([
      ['side panel', 18, 720],
      ['middle panel', 18, 720],
      ['side panel', 18, 720],
      ['top panel', 414.5, 18],
      ['bottom panel', 414.5, 18],
      ['top panel', 414.5, 18],
      ['bottom panel', 414.5, 18],
    ]);
    expect(values(elevation, 'between', 'y', 1)).toEqual([3, 3, 3, 3]);
    expect(values(elevation, 'between', 'x', 1)).toEqual([3, 3, 3]);
    expect(values(elevation, 'reveal', 'x', 1)).toEqual([1.5, 1.5, 1.5, 1.5, 1.5, 1.5]);
    expect(values(elevation, 'reveal', 'y', 1)).toEqual([3, 0, 3, 0]);
  });

  test('takes the members of the kind of cabinet', () => {
    const elevation = elevationOf(boathouse, 'B3', frameless, 'mm');
    expect(elevation.outside).toEqual({ x: -25, y: -18, w: 600, h: 720 });
  });

  test('divides a five-piece front into two stiles, two rails and a panel that fill it', () => {
    const elevation = elevationOf(harbor, 'R1', faceFrame);
    expect(elevation.drawers.map(({ pieces }) => pieces.length)).toEqual([0, 5, 5, 5]);
    for (const { front, pieces } of elevation.drawers.slice(1)) {
      const area = pieces.reduce((sum, { w, h }) => sum + w * h, 0);
      expect(area).toBeCloseTo(front.w * front.h, 6);
    }
    const panel = elevation.drawers[1]?.pieces[4];
    expect(panel === undefined ? null : rectangle(panel)).toEqual([0.75, 6.75, 13.5, 2.875]);
  });

  test.for([
    [60, 40, 150],
    [60, 30, 120],
    [40, 60, 150],
  ] as const)('frontPieces: stiles of %i and rails of %i in a front 400 by %i', ([stile, rail, h]) => {
    const front = { kind: 'five-piece', memberWidth: stile, railWidth: rail } as const;
    const panel = { x: 10 + stile, y: 20 + rail, w: 400 - 2 * stile, h: h - 2 * rail };
    const pieces = frontPieces({ x: 10, y: 20, w: 400, h }, front);
    expect(pieces).toHaveLength(5);
    expect(pieces.at(-1)).toEqual(panel);
    expect(pieces.reduce((sum, piece) => sum + piece.w * piece.h, 0)).toBeCloseTo(400 * h, 6);
  });

  test('frontPieces: none where the rails leave no room for a panel', () => {
    const front = { kind: 'five-piece', memberWidth: 40, railWidth: 60 } as const;
    expect(frontPieces({ x: 0, y: 0, w: 400, h: 120 }, front)).toEqual([]);
  });

  test.for([
    ['harbor-library', faceFrame, 'in'],
    ['boathouse-frameless', frameless, 'mm'],
  ] as const)(
    'keeps the boxes of %s in their openings, the overhangs as fitted',
    ([name, standard, unit]) => {
      let checked = 0;
      for (const cabinet of cabinetsOf(orderText(name), standard, unit)) {
        const fits = new Map(cabinet.map(({ rowId, fit }) => [rowId, fit]));
        const { drawers } = cabinetElevation(cabinet, { construction: standard.construction, findings: [] });
        for (const { rowId, opening, box, front } of drawers) {
          const fit = fits.get(rowId);
          expect(box.x).toBeGreaterThan(opening.x);
          expect(box.x + box.w).toBeLessThan(opening.x + opening.w);
          expect(box.y).toBeGreaterThan(opening.y);
          expect(box.y + box.h).toBeLessThan(opening.y + opening.h);
          expect(front.y + front.h - (box.y + box.h)).toBeCloseTo(fit?.overhang.bottom ?? NaN, 9);
          expect(box.y - front.y).toBeCloseTo(fit?.overhang.top ?? NaN, 9);
          const sides = (fit?.overhang.left ?? NaN) + (fit?.overhang.right ?? NaN);
          if (fit?.drawer.frontW === undefined) expect(front.w - box.w).toBeCloseTo(sides, 9);
          checked += 1;
        }
      }
      expect(checked).toBe(fitsOf(orderText(name), standard, unit).length);
    },
  );

  test('ends each dimension line on the edges that it measures, as far apart as it says', () => {
    for (const cabinet of cabinetsOf(harbor, faceFrame, 'in')) {
      const elevation = cabinetElevation(cabinet, { construction: 'face frame', findings: [] });
      const all = [...elevation.drawers.flatMap(({ front, opening }) => [front, opening]), elevation.outside];
      const lines = { x: all.flatMap(({ x, w }) => [x, x + w]), y: all.flatMap(({ y, h }) => [y, y + h]) };
      for (const { kind, axis, mm, from, to } of elevation.dimensions) {
        expect(Math.abs(to[axis] - from[axis])).toBeCloseTo(Math.abs(mm), 9);
        const other = axis === 'x' ? 'y' : 'x';
        expect(to[other]).toBe(from[other]);
        const ends = kind === 'unseen' ? [from] : [from, to];
        for (const end of ends) {
          expect(Math.min(...lines[axis].map((line) => Math.abs(line - end[axis])))).toBeLessThan(1e-9);
        }
      }
    }
  });

  test('is negative where fronts overlap or stand past their cabinet', () => {
    const csv =
      'cabinet,drawer,qty,style,opening_w,opening_h,left,bottom\nA,one,1,full overlay,20,5,lap 2,lap 1/2\nA,two,1,full overlay,20,5,,\n';
    const elevation = elevationOf(csv, 'A', faceFrame);
    // 1-1/2 - 1/2 - 1-1/4 in between the fronts; 1-1/2 - 2 in at the left of the upper one.
    expect(values(elevation, 'between', 'y')).toEqual([-0.25]);
    expect(values(elevation, 'reveal', 'x')[0]).toBe(-0.5);
  });

  test('says of each row the worst that was found about it', () => {
    const rows = fitsOf(harbor, faceFrame, 'in').filter(({ fit }) => fit.drawer.cabinet === 'R1');
    const elevation = cabinetElevation(rows, {
      construction: 'face frame',
      findings: [
        { rowId: 'row 3', finding: { severity: 'warning' } },
        { rowId: 'row 4', finding: { severity: 'error' } },
        { rowId: 'row 4', finding: { severity: 'warning' } },
        { rowId: null, finding: { severity: 'error' } },
      ],
    });
    expect(elevation.drawers.map(({ state }) => state)).toEqual(['right', 'warning', 'error', 'right']);
  });

  test('throws for drawers of two cabinets', () => {
    expect(() =>
      cabinetElevation(fitsOf(harbor, faceFrame, 'in'), { construction: 'face frame', findings: [] }),
    ).toThrow(RangeError);
  });
});
