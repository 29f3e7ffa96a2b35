import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fastenOrder } from '../../../core/fastening/fasten-order.ts';
import { exportPart } from '../../../core/files/export-part.ts';
import { fitOrder } from '../../../core/fit/fit-order.ts';
import { planAids } from '../../../core/jigs/aids/plan-aids.ts';
import { readOrderCsv } from '../../../core/order/read-csv.ts';
import { partsOf } from '../../../core/parts/parts-of.ts';
import { STROKE_FONT } from '../../../shared/stroke-font.ts';
import { readStandard } from '../../rules/read-standard.ts';
import { contextOf, MACHINE_NAMES } from '../setups.ts';

/** Cabinets of the larger order that have rows of screws, leaning ones, and two pulls; the rest are like them. */
const CABINETS: ReadonlySet<string> = new Set(['R2', 'C1', 'L2', 'W3']);

/** The demo orders with the screws and pulls that the program finds for them. */
const DEMOS = (
  [
    ['harbor-library', 'face-frame-undermount.json', 'in'],
    ['boathouse-frameless', 'frameless-undermount.json', 'mm'],
  ] as const
).map(([name, file, unit]) => {
  const standard = readStandard(file);
  const text = readFileSync(new URL(`../../../assets/orders/${name}.csv`, import.meta.url), 'utf8');
  const order = readOrderCsv(text, { file: `${name}.csv`, name, unit, standard }).value;
  const fits = fitOrder(order, standard).value.filter(
    ({ drawer }) => name !== 'harbor-library' || CABINETS.has(drawer.cabinet),
  );
  return { name, standard, fastenings: fastenOrder(fits, standard).value };
});

const cases = MACHINE_NAMES.flatMap((machine) => DEMOS.map((demo) => ({ machine, demo, name: demo.name })));

describe('the aids of the demo orders', () => {
  test.for(cases)(
    '$name on $machine: every screw is in a guide, left to the template, or told',
    ({ machine, demo: { fastenings, standard } }) => {
      const { value, findings } = planAids(fastenings, standard, contextOf(machine), undefined, 1);
      expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      let screws = 0;
      for (const { fit, places } of fastenings) {
        const uses = value.uses.filter((use) => use.fit === fit);
        for (const place of places) {
          const { corner } = place;
          const served = uses.filter((use) => use.places.includes(place) || use.beyond.includes(place));
          const told = findings.some(
            ({ code, at, values }) =>
              code === 'jigs/no-guide' &&
              at.row === fit.drawer.row &&
              values['hand'] === corner.hand &&
              values['end'] === corner.end,
          );
          expect(served.length === 1 || told).toBe(true);
          screws += 1;
        }
        for (const { jig, places: guided } of uses) {
          if (jig.kind !== 'corner drill guide') continue;
          expect(jig.drilling?.bores.length).toBeGreaterThanOrEqual(guided.length);
          for (const [index, { fromSide, angle }] of guided.entries()) {
            expect(Math.abs(jig.drilling?.bores[index]?.at.x ?? NaN)).toBeCloseTo(fromSide, 2);
            expect(jig.drilling?.bores[index]?.angle).toBeCloseTo(angle, 3);
          }
        }
      }
      expect(screws).toBeGreaterThan(20);
      expect(new Set(value.jigs.map(({ id }) => id)).size).toBe(value.jigs.length);
    },
  );

  test.for(cases)(
    '$name on $machine: the cut files of every part are sound',
    ({ machine, demo: { fastenings, standard } }) => {
      const context = contextOf(machine);
      const { value } = planAids(fastenings, standard, context);
      // Guides are alike but for their bores, and the parts of a pair are mirror images: the last of each kind,
      // whose ids are the longest, are enough here.
      const few = ['corner drill guide', 'pull template'].flatMap((kind) =>
        value.jigs.filter((jig) => jig.kind === kind && jig.hand !== 'right').slice(-1),
      );
      expect(few.length).toBeGreaterThan(0);
      const parts = partsOf(few, context.machine, STROKE_FONT);
      expect(parts.findings).toEqual([]);
      for (const part of parts.value) {
        const { value: files, findings } = exportPart(part, context.machine);
        expect({ part: part.id, findings }).toEqual({ part: part.id, findings: [] });
        expect(files).not.toBeNull();
      }
    },
  );

  test('on the thinnest sheet no part of any aid has a finding', () => {
    for (const { fastenings, standard } of DEMOS) {
      const context = contextOf('laser-3');
      const { value } = planAids(fastenings, standard, context);
      expect(partsOf(value.jigs, context.machine, STROKE_FONT).findings).toEqual([]);
    }
  });
});
