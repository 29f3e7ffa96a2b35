import { fc, test as property } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { exportPart } from '../../core/files/export-part.ts';
import type { Drawer } from '../../core/order/types.ts';
import { designOrder, type Workshop } from '../../core/pipeline.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { MACHINE_NAMES, readMachine } from '../jigs/setups.ts';
import { jigOverhangs } from '../measure/jig-overhangs.ts';
import { measuredPart } from '../measure/overhangs.ts';
import { readWithDxfParser } from '../readers/dxf-parser.ts';
import { readStandard } from '../rules/read-standard.ts';
import { plausibleDrawers } from './random-orders.ts';

const standard = readStandard('face-frame-undermount.json');
const drawers = plausibleDrawers(
  standard.styles.map(({ name }) => name),
  Object.keys(standard.cabinetKinds),
);

const workshops = fc
  .record({
    machine: fc.constantFrom(...MACHINE_NAMES).map(readMachine),
    registration: fc.constantFrom('edge' as const, 'corner' as const),
  })
  .map((chosen): Workshop => ({ ...chosen, standard, font: STROKE_FONT }));

const order = (given: readonly Drawer[]) => ({ name: 'random', unit: 'in' as const, drawers: given });

describe('designOrder', () => {
  property.prop([drawers, workshops], { seed: 20_261_131, numRuns: 40 })(
    'gives for any plausible order files from which every overhang is re-measured within 0.01 mm, or says why not',
    (given, workshop) => {
      const { machine } = workshop;
      const { value: design, findings } = designOrder(order(given), workshop);
      const errors = findings.filter(({ severity }) => severity === 'error');
      if (errors.length > 0) {
        for (const { message } of errors) expect(message.length).toBeGreaterThan(30);
        return;
      }
      // What aids to drilling place is measured in tests/jigs/aids.
      for (const jig of design.plan.jigs.filter(({ drilling }) => drilling === undefined)) {
        const uses = design.plan.uses.filter((use) => use.jig === jig);
        const measured = jigOverhangs({
          kind: jig.kind,
          hand: jig.hand,
          backBevel: uses[0]?.fit.rules.backBevel.value ?? 0,
          frontThickness: Math.min(...uses.map(({ fit }) => fit.frontThickness)),
          sheetThickness: machine.sheet.thickness,
          outside: machine.compensation === 'file' ? machine.kerf / 2 : 0,
          part: (name) => {
            const part = design.parts.find(({ id }) => id === `${jig.id}-${name}`);
            const file = part === undefined ? null : exportPart(part, machine).value;
            if (file === null) throw new Error(`${jig.id}-${name} has no file`);
            return measuredPart(readWithDxfParser(file.dxf).entities);
          },
          copies: (name) => design.parts.find(({ id }) => id === `${jig.id}-${name}`)?.copies ?? 0,
        });
        const sets = jig.seats.flatMap((seat) => seat.sets);
        for (const [index, { overhang }] of sets.entries()) {
          expect(Math.abs((measured[index] ?? Number.NaN) - overhang)).toBeLessThan(0.01);
        }
        for (const { fit, edge } of uses) {
          const own = sets.filter(({ edges }) => edges.includes(edge)).map(({ overhang }) => overhang);
          expect(Math.min(...own.map((overhang) => Math.abs(overhang - fit.overhang[edge])))).toBeLessThan(
            0.001,
          );
        }
      }
      for (const fit of design.fits) {
        const edges = design.plan.uses.filter((use) => use.fit === fit).map(({ edge }) => edge);
        expect(edges).toContain('bottom');
        expect(edges.includes('left') || edges.includes('right')).toBe(true);
      }
    },
  );

  property.prop([drawers], { seed: 20_261_132, numRuns: 60 })(
    'mirrors the jigs of a mirrored order: columns from the other end, left and right swapped',
    (given) => {
      const columns = Math.max(...given.map(({ column }) => column));
      const mirrored = given.map((drawer) => {
        const own = Math.max(
          ...given.filter(({ cabinet }) => cabinet === drawer.cabinet).map(({ column }) => column),
        );
        return { ...drawer, column: own + 1 - drawer.column };
      });
      expect(columns).toBeGreaterThan(0);
      const workshop: Workshop = {
        standard,
        machine: readMachine('laser-6'),
        registration: 'corner',
        font: STROKE_FONT,
      };
      const [one, other] = [given, mirrored].map((drawers) => designOrder(order(drawers), workshop).value);
      const fits = (design: typeof one, left: 'left' | 'right', right: 'left' | 'right') =>
        (design?.fits ?? [])
          .map(({ overhang, drawer }) => [
            drawer.row,
            overhang[left],
            overhang[right],
            overhang.top,
            overhang.bottom,
          ])
          .toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
      expect(fits(other, 'right', 'left')).toEqual(fits(one, 'left', 'right'));
      const hands = (design: typeof one, swap: boolean) =>
        (design?.plan.jigs ?? [])
          .filter(({ hand, drilling }) => hand !== null && drilling === undefined)
          .map(({ hand, parameters }) => {
            const own = swap ? (hand === 'left' ? 'right' : 'left') : hand;
            return `${own} ${parameters['bottomOverhang']?.toFixed(6)} ${parameters['sideOverhang']?.toFixed(6)}`;
          })
          .toSorted();
      expect(hands(other, true)).toEqual(hands(one, false));
    },
  );
});
