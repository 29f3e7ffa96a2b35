import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundleSheets } from '../../core/bundle-sheets.ts';
import { exportSheets, type ExportedSheet } from '../../core/files/export-sheet.ts';
import { packParts } from '../../core/files/pack-parts.ts';
import { withoutPause } from '../../core/sheets/packer/pausing.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Part } from '../../core/parts/types.ts';
import type { SheetPlan } from '../../core/sheets/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { jigOverhangs } from '../measure/jig-overhangs.ts';
import { flatten } from '../measure/outline.ts';
import { measuredPart } from '../measure/overhangs.ts';
import { demo, type Demo } from '../pipeline/demo.ts';
import { readWithEzdxf, type EzdxfReport } from '../readers/ezdxf.ts';
import type { ReadEntity } from '../readers/types.ts';
import { layoutFaults } from '../sheets/layout-faults.ts';
import { bar } from '../sheets/sheet-parts.ts';

/** mm. What every exported overhang is held to. */
const WITHIN = 0.01;

const laid = (
  name: Parameters<typeof readMachine>[0],
  changes: Partial<MachineProfile>,
  effort: number,
): MachineProfile => {
  const machine = { ...readMachine(name), ...changes };
  return { ...machine, sheets: { ...machine.sheets, effort } };
};

interface Case {
  readonly demo: Demo;
  readonly machine: MachineProfile;
  readonly plan: SheetPlan;
  readonly sheets: readonly { readonly sheet: ExportedSheet; readonly read: EzdxfReport }[];
}

/** Every third jig of an order, of all kinds: a few sheets. */
function someJigs(given: Demo): Demo {
  const { plan, parts } = given.design;
  const jigs = plan.jigs.filter((_, index) => index % 3 === 0);
  const own = parts.filter(({ jig }) => jigs.some(({ id }) => id === jig));
  return { ...given, design: { ...given.design, plan: { ...plan, jigs }, parts: own } };
}

const folder = mkdtempSync(join(tmpdir(), 'overhang-sheets-'));
const cases: Case[] = [];

beforeAll(() => {
  const machines = [
    laid('laser-6', {}, 20),
    laid('router', { compensation: 'file' }, 0),
    laid('laser-6', { tabs: { use: 'bridges', width: 0.6, spacing: 150 } }, 0),
  ];
  const laser = someJigs(demo('harbor-library', readMachine('laser-6'), 'edge'));
  const made = machines.map((machine, index) => {
    const own = machine.kind === 'laser' ? laser : someJigs(demo('harbor-library', machine, 'edge'));
    const plan = withoutPause(packParts(own.design.parts, machine));
    expect(plan.findings).toEqual([]);
    const sheets = [...exportSheets(plan.value.sheets, machine)].map(({ value, findings }) => {
      if (value === null) throw new Error(findings.map(({ message }) => message).join('\n'));
      const path = join(folder, `${index}-${value.number}.dxf`);
      writeFileSync(path, value.dxf);
      return { sheet: value, path };
    });
    return { demo: own, machine, plan: plan.value, sheets };
  });
  const read = readWithEzdxf(made.flatMap(({ sheets }) => sheets.map(({ path }) => path)));
  let at = 0;
  for (const one of made) {
    const sheets = one.sheets.map(({ sheet }) => {
      const report = read[at];
      at += 1;
      if (report === undefined) throw new Error('a sheet was not read');
      return { sheet, read: report };
    });
    cases.push({ ...one, sheets });
  }
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const outside = ({ compensation, kerf }: MachineProfile): number => (compensation === 'file' ? kerf / 2 : 0);

const outlinesOf = ({ entities }: EzdxfReport): readonly ReadEntity[] =>
  entities.filter(({ layer }) => layer === 'CUT_OUTSIDE');

/** Whether a point is within straight sides, by the crossings of a ray. */
const within = (sides: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): boolean =>
  sides.filter(([ax, ay], index) => {
    const [bx, by] = sides[(index + 1) % sides.length] ?? [ax, ay];
    return ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax;
  }).length %
    2 ===
  1;

const somePoint = ({ circle, vertices }: ReadEntity): readonly [number, number] => {
  const [x = Number.NaN, y = Number.NaN] = circle ?? vertices[0] ?? [];
  return [x, y];
};

/** An entity moved along x and y, mm. */
function moved(entity: ReadEntity, x: number, y: number): ReadEntity {
  const { circle } = entity;
  return {
    ...entity,
    circle: circle === null ? null : [circle[0] + x, circle[1] + y, circle[2]],
    vertices: entity.vertices.map(([ex, ey, bulge]) => [ex + x, ey + y, bulge]),
  };
}

/** Lines of a file as the part is drawn by itself: its outline's lower left extent where the part has it, half a cut outside. */
function asDrawn(entities: readonly ReadEntity[], { features }: Part, half: number): readonly ReadEntity[] {
  const [outline] = entities;
  const [drawn] = features.flatMap(({ operation, contour }) => (operation === 'cut-outer' ? [contour] : []));
  if (outline === undefined || drawn === undefined || drawn.kind === 'circle') throw new Error('no outline');
  const sides = flatten(outline.vertices);
  const own = flatten(drawn.vertices.map(({ x, y, bulge }) => [x, y, bulge]));
  const least = (points: typeof sides, axis: 0 | 1): number =>
    Math.min(...points.map((point) => point[axis]));
  const [x, y] = [least(own, 0) - half - least(sides, 0), least(own, 1) - half - least(sides, 1)];
  return entities.map((entity) => moved(entity, x, y));
}

/** An entity turned clockwise by quarters about the origin, as it lay before it was placed. */
function turnedBack(entity: ReadEntity, turns: number): ReadEntity {
  const back = (x: number, y: number): readonly [number, number] => {
    if (turns === 0) return [x, y];
    if (turns === 1) return [y, -x];
    return turns === 2 ? [-x, -y] : [-y, x];
  };
  const { circle } = entity;
  return {
    ...entity,
    circle: circle === null ? null : [...back(circle[0], circle[1]), circle[2]],
    vertices: entity.vertices.map(([x, y, bulge]) => [...back(x, y), bulge]),
  };
}

describe('exportSheet', () => {
  test('DXF-1: ezdxf reads every sheet strictly, with no error and no fix in its audit', () => {
    for (const { sheets } of cases) {
      expect(sheets.length).toBeGreaterThan(0);
      for (const { read } of sheets) {
        const { failure, errors, fixes } = read;
        expect({ failure, errors, fixes }).toEqual({ failure: null, errors: [], fixes: [] });
      }
    }
  });

  test('DXF-4: every copy of every part has its closed outline on some sheet', () => {
    for (const { demo: own, machine, sheets } of cases.slice(0, 2)) {
      const copies = own.design.parts.reduce((sum, part) => sum + part.copies, 0);
      const outlines = sheets.flatMap(({ read }) => outlinesOf(read));
      expect({ machine: machine.name, outlines: outlines.length }).toEqual({
        machine: machine.name,
        outlines: copies,
      });
      expect(outlines.every(({ closed }) => closed)).toBe(true);
    }
  });

  test('runs engraving first, then insides, tabs, and outlines last', () => {
    const order = ['ENGRAVE', 'DRILL', 'POCKET', 'CUT_INSIDE', 'TABS', 'CUT_OUTSIDE'];
    for (const { sheets } of cases) {
      for (const { read } of sheets) {
        const places = read.entities.map(({ layer }) => order.indexOf(layer));
        expect(places).toEqual(places.toSorted((a, b) => a - b));
        expect(Math.min(...places)).toBe(0);
      }
    }
  });

  test('NEST-1: no two parts lie nearer than the spacing, none in the margin, by a polygon library', () => {
    for (const { machine, plan, sheets } of cases.slice(0, 2)) {
      for (const [index, { read }] of sheets.entries()) {
        const stock = plan.sheets[index]?.stock ?? { width: 0, height: 0 };
        const outlines = outlinesOf(read).map(({ vertices }, at) => ({
          name: `part ${at}`,
          points: flatten(vertices).map(([x, y]) => ({ x, y })),
        }));
        const half = outside(machine);
        const { edgeMargin, spacing } = machine.sheets;
        // The lines of the file run half a cut outside the parts.
        const between = { edgeMargin: edgeMargin - half, spacing: spacing - 2 * half };
        expect(layoutFaults(outlines, stock, between)).toEqual([]);
      }
    }
  });

  test('sets the overhangs of the order: measured again on the sheets, within 0.01 mm', () => {
    let measured = 0;
    for (const { demo: own, machine, sheets } of cases.slice(0, 2)) {
      const parts = new Map<string, readonly ReadEntity[]>();
      for (const { sheet, read } of sheets) {
        for (const [index, outline] of outlinesOf(read).entries()) {
          const placed = sheet.sheet.placed[index];
          if (placed === undefined) throw new Error('an outline of no part');
          const sides = flatten(outline.vertices);
          const inside = read.entities.filter(
            (entity) => entity.layer !== 'CUT_OUTSIDE' && within(sides, somePoint(entity)),
          );
          parts.set(
            placed.part.id,
            asDrawn(
              [outline, ...inside].map((entity) => turnedBack(entity, placed.turns)),
              placed.part,
              outside(machine),
            ),
          );
        }
      }
      for (const jig of own.design.plan.jigs) {
        const sets = jig.seats.flatMap((seat) => seat.sets);
        if (jig.drilling !== undefined || sets.length === 0) continue;
        const uses = own.design.plan.uses.filter((use) => use.jig === jig);
        const reaches = jigOverhangs({
          kind: jig.kind,
          hand: jig.hand,
          backBevel: uses[0]?.fit.rules.backBevel.value ?? 0,
          frontThickness: Math.min(...uses.map(({ fit }) => fit.frontThickness)),
          sheetThickness: machine.sheet.thickness,
          outside: outside(machine),
          part: (name) => measuredPart(parts.get(`${jig.id}-${name}`) ?? []),
          copies: (name) => own.design.parts.find(({ id }) => id === `${jig.id}-${name}`)?.copies ?? 0,
        });
        expect(reaches).toHaveLength(sets.length);
        for (const [index, { overhang }] of sets.entries()) {
          expect(Math.abs((reaches[index] ?? Number.NaN) - overhang)).toBeLessThan(WITHIN);
          measured += 1;
        }
      }
    }
    expect(measured).toBeGreaterThan(5);
  });

  test('marks every outline of a router with two tabs or more that lie on it, and cuts none of it open', () => {
    const router = cases[1];
    if (router === undefined) throw new Error('unreachable');
    for (const { sheet, read } of router.sheets) {
      const marks = read.entities.filter(({ layer }) => layer === 'TABS');
      expect(marks.length).toBeGreaterThanOrEqual(2 * sheet.sheet.placed.length);
      expect(sheet.dxfReport.openContoursOnCutLayers).toBe(0);
    }
  });

  test.each(['machine', 'file'] as const)(
    'DXF-6: tab marks of two parts that face each other don’t meet, the cut allowed for by the %s',
    (compensation) => {
      const machine = laid('router', { compensation }, 0);
      const parts = [bar('A', 150, 50, { material: machine.sheet.material, thickness: 12.7, copies: 12 })];
      const plan = withoutPause(packParts(parts, machine));
      const sheets = [...exportSheets(plan.value.sheets, machine)];
      expect(sheets.flatMap(({ findings }) => findings)).toEqual([]);
      expect(sheets[0]?.value?.sheet.placed).toHaveLength(12);
    },
  );

  test('leaves outlines open where bridges are asked for, and reports how many', () => {
    const bridged = cases[2];
    if (bridged === undefined) throw new Error('unreachable');
    for (const { sheet, read } of bridged.sheets) {
      const open = outlinesOf(read).filter(({ closed }) => !closed);
      expect(open.length).toBeGreaterThan(sheet.sheet.placed.length);
      expect(sheet.dxfReport.openContoursOnCutLayers).toBe(open.length);
    }
  });

  test('DXF-6: an edge that two parts share on a sheet is reported', () => {
    const machine = laid('laser-6', { tabs: { use: 'none', width: 0.6, spacing: 150 } }, 0);
    const tight = { ...machine, sheets: { ...machine.sheets, spacing: machine.kerf } };
    const parts = [bar('A', 100, 50, { material: machine.sheet.material, copies: 2 })];
    const plan = withoutPause(packParts(parts, tight));
    const [only] = [...exportSheets(plan.value.sheets, tight)];
    expect(only?.value).not.toBeNull();
    expect(only?.findings.map(({ code }) => code)).toEqual(['files/overlap']);
    expect(only?.findings[0]?.message).toMatch(
      /^sheet 1: Contours 1 and 2 \(cut-outer\) run over each other/,
    );
  });
});

const all = (steps: ReturnType<typeof bundleSheets>) => {
  const outcomes = [...steps];
  return {
    value: outcomes.flatMap(({ value }) => value),
    findings: outcomes.flatMap(({ findings }) => findings),
  };
};

describe('bundleSheets', () => {
  test('ends when it is stopped, between two sheets', () => {
    const machine = laid('laser-6', {}, 0);
    const parts = [bar('A', 500, 300, { material: machine.sheet.material, copies: 4 })];
    let stopped = false;
    const paths: string[] = [];
    for (const { value } of bundleSheets(parts, machine, () => stopped)) {
      paths.push(...value.map(({ path }) => path));
      if (paths.length >= 2) stopped = true;
    }
    expect(paths).toEqual(['sheets/sheet-01-birch-plywood_mm.dxf', 'sheets/sheet-01-birch-plywood_mm.svg']);
  });

  test('has steps without a file while it packs, and ends at once when it is stopped there', () => {
    const machine = laid('laser-6', {}, 2000);
    const parts = [bar('A', 260, 140, { material: machine.sheet.material, copies: 30 })];
    const whole = [...bundleSheets(parts, machine)];
    const empty = whole.findIndex(({ value }) => value.length > 0);
    expect(empty).toBeGreaterThan(20);
    let steps = 0;
    let stopped = false;
    for (const { value } of bundleSheets(parts, machine, () => stopped)) {
      steps += 1;
      expect(value).toEqual([]);
      if (steps === 5) stopped = true;
    }
    expect(steps).toBe(5);
  });

  test('writes two files for a sheet, and lists that name every copy once', () => {
    const machine = laid('laser-6', {}, 0);
    const parts = [
      bar('A', 300, 200, { material: machine.sheet.material, copies: 3 }),
      bar('B', 90, 40, { material: machine.sheet.material }),
    ];
    const { value, findings } = all(bundleSheets(parts, machine));
    expect(findings).toEqual([]);
    const paths = value.map(({ path }) => path);
    expect(paths).toEqual([
      'sheets/sheet-01-birch-plywood_mm.dxf',
      'sheets/sheet-01-birch-plywood_mm.svg',
      'sheets/sheet-02-birch-plywood_mm.dxf',
      'sheets/sheet-02-birch-plywood_mm.svg',
      'sheets/sheets.csv',
      'sheets/sheets.txt',
    ]);
    const table = String(value.find(({ path }) => path.endsWith('.csv'))?.content);
    const rows = table.trim().split('\r\n').slice(1);
    expect(rows.map((row) => row.split(',').slice(6, 8).join(' ')).toSorted()).toEqual([
      'A 1',
      'A 2',
      'A 3',
      'B 1',
    ]);
    expect(String(value.at(-1)?.content)).toContain('sheets/sheet-02-birch-plywood_mm.dxf');
    expect(all(bundleSheets(parts, machine))).toEqual({ value, findings });
  });

  test('writes nothing when a part finds no sheet, and says which', () => {
    const machine = laid('laser-6', {}, 0);
    const { value, findings } = all(
      bundleSheets([bar('long', 900, 50, { material: machine.sheet.material })], machine),
    );
    expect(value).toEqual([]);
    expect(findings.map(({ code }) => code)).toEqual(['sheets/too-large']);
  });
});
