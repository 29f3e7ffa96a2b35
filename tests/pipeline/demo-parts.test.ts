import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { exportPart } from '../../core/files/export-part.ts';
import type { Part } from '../../core/parts/types.ts';
import { jigOverhangs } from '../measure/jig-overhangs.ts';
import { flatten, selfCrossings } from '../measure/outline.ts';
import { measuredPart } from '../measure/overhangs.ts';
import { readWithDxfParser } from '../readers/dxf-parser.ts';
import { readWithEzdxf, type EzdxfReport } from '../readers/ezdxf.ts';
import { demos, type Demo } from './demo.ts';

const VERSIONS = ['R12', 'R2000'] as const;

/** mm. What every exported overhang is held to. */
const WITHIN = 0.01;

interface Exported {
  readonly demo: Demo;
  readonly part: Part;
  readonly version: (typeof VERSIONS)[number];
  readonly dxf: string;
  readonly path: string;
}

/** The demos that the demo command makes; of the others only what sets overhangs is written, for time's sake. */
const MADE = new Set([0, 3]);

// Every part of the demo orders, in both versions, read by ezdxf in one go.
const folder = mkdtempSync(join(tmpdir(), 'overhang-demo-'));
const exported: Exported[] = [];
let reports: ReadonlyMap<string, EzdxfReport> = new Map();

beforeAll(() => {
  for (const [index, demo] of demos().entries()) {
    const { machine } = demo.workshop;
    for (const version of VERSIONS) {
      for (const part of demo.design.parts) {
        if (part.drills !== undefined && !MADE.has(index)) continue;
        const { value, findings } = exportPart(part, { ...machine, dxf: { ...machine.dxf, version } });
        if (value === null) throw new Error(findings.map(({ message }) => message).join('\n'));
        const path = join(folder, `${index}-${version}-${part.id}.dxf`);
        writeFileSync(path, value.dxf);
        exported.push({ demo, part, version, dxf: value.dxf, path });
      }
    }
  }
  const paths = exported.map(({ path }) => path);
  const read = readWithEzdxf(paths);
  reports = new Map(paths.map((path, index) => [path, read[index] ?? missing(path)]));
}, 900_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function missing(path: string): never {
  throw new Error(`no report of ${path}`);
}

const reportOf = (path: string): EzdxfReport => reports.get(path) ?? missing(path);

describe('every part of the demo orders, R12 and R2000', () => {
  test('there are some', () => {
    expect(exported.length).toBeGreaterThan(400);
  });

  test('DXF-1: ezdxf reads it strictly, with no error and no fix in its audit', () => {
    for (const { path, version } of exported) {
      const { failure, errors, fixes, version: read } = reportOf(path);
      expect({ path, failure, errors, fixes }).toEqual({ path, failure: null, errors: [], fixes: [] });
      expect(read).toBe(version === 'R12' ? 'AC1009' : 'AC1015');
    }
  });

  test('DXF-1: a second reader sees the same entities', () => {
    for (const { path, dxf } of exported) {
      const other = readWithDxfParser(dxf);
      const { entities, layers } = reportOf(path);
      expect(other.layers).toEqual(layers);
      expect(other.entities.length).toBe(entities.length);
      for (const [index, entity] of entities.entries()) {
        const twin = other.entities[index];
        expect(twin?.type).toBe(entity.type);
        expect(twin?.layer).toBe(entity.layer);
        expect(twin?.vertices.length).toBe(entity.vertices.length);
        expect(twin?.circle ?? null).toEqual(
          entity.circle === null ? null : entity.circle.map((n) => expect.closeTo(n, 6)),
        );
      }
    }
  });

  test('every outline is closed and free of self-intersections', () => {
    for (const { path, version } of exported) {
      if (version === 'R12') continue; // the same outlines as in R2000, which the tests above compared
      for (const entity of reportOf(path).entities) {
        if (entity.layer === 'ENGRAVE') continue;
        expect({ path, layer: entity.layer, closed: entity.closed }).toMatchObject({ closed: true });
        if (entity.circle === null)
          expect({ path, crossings: selfCrossings(flatten(entity.vertices)) }).toEqual({
            path,
            crossings: 0,
          });
      }
    }
  });

  test('every overhang, measured on the parts as they lie in the files, is right within 0.01 mm', () => {
    let measuredOverhangs = 0;
    for (const demo of new Set(exported.map((one) => one.demo))) {
      for (const version of VERSIONS) {
        const files = exported.filter((one) => one.demo === demo && one.version === version);
        // What aids to drilling place is measured in tests/jigs/aids.
        for (const jig of demo.design.plan.jigs.filter(({ drilling }) => drilling === undefined)) {
          const own = files.filter(({ part }) => part.jig === jig.id);
          const named = (name: string) => own.find(({ part }) => part.id === `${jig.id}-${name}`);
          const uses = demo.design.plan.uses.filter((use) => use.jig === jig);
          const measured = jigOverhangs({
            kind: jig.kind,
            hand: jig.hand,
            backBevel: uses[0]?.fit.rules.backBevel.value ?? 0,
            frontThickness: Math.min(...uses.map(({ fit }) => fit.frontThickness)),
            sheetThickness: demo.workshop.machine.sheet.thickness,
            outside: demo.workshop.machine.compensation === 'file' ? demo.workshop.machine.kerf / 2 : 0,
            part: (name) => measuredPart(reportOf(named(name)?.path ?? missing(name)).entities),
            copies: (name) => named(name)?.part.copies ?? 0,
          });
          const sets = jig.seats.flatMap((seat) => seat.sets);
          expect(measured).toHaveLength(sets.length);
          for (const [index, { edges, overhang }] of sets.entries()) {
            const label = `${demo.name} ${version} ${jig.id} ${edges.join('/')}`;
            expect({ label, off: Math.abs((measured[index] ?? Number.NaN) - overhang) < WITHIN }).toEqual({
              label,
              off: true,
            });
            // And what it sets is what each drawer that it serves needs.
            for (const use of uses.filter((one) => edges.includes(one.edge) && sets.length === 1)) {
              expect(Math.abs(use.fit.overhang[use.edge] - (measured[index] ?? Number.NaN))).toBeLessThan(
                WITHIN,
              );
            }
            measuredOverhangs += 1;
          }
        }
      }
    }
    expect(measuredOverhangs).toBeGreaterThan(100);
  });

  test('every drawer is set at its bottom and at a side by a jig that sets just that', () => {
    for (const { design } of new Set(exported.map((one) => one.demo))) {
      for (const fit of design.fits) {
        const uses = design.plan.uses.filter((use) => use.fit === fit);
        expect(uses.map(({ edge }) => edge)).toContain('bottom');
        expect(uses.some(({ edge }) => edge === 'left' || edge === 'right')).toBe(true);
        for (const { jig, edge } of uses) {
          const sets = jig.seats.flatMap((seat) => seat.sets).filter(({ edges }) => edges.includes(edge));
          const errors = sets.map(({ overhang }) => Math.abs(overhang - fit.overhang[edge]));
          expect(Math.min(...errors)).toBeLessThan(0.001);
        }
      }
    }
  });
});
