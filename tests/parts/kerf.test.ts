import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { offsetContour } from '../../core/geometry/offset.ts';
import type { ClosedContour } from '../../core/geometry/types.ts';
import { bottomFence } from '../../core/jigs/kinds/bottom-fence.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import { sideSpacer } from '../../core/jigs/kinds/side-spacer.ts';
import { stepProfile } from '../../core/jigs/kinds/step-profile.ts';
import type { Jig, Setup } from '../../core/jigs/types.ts';
import { makePart } from '../../core/parts/make-part.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { contextOf, setup } from '../jigs/setups.ts';
import { jigOverhangs } from '../measure/jig-overhangs.ts';
import { measuredPart, type MeasuredPart } from '../measure/overhangs.ts';
import type { ReadEntity } from '../readers/types.ts';

const context = contextOf('laser-6');

/** A contour as a reader would tell it. */
const entity = (contour: ClosedContour, layer: string): ReadEntity =>
  contour.kind === 'circle'
    ? {
        type: 'CIRCLE',
        layer,
        closed: true,
        vertices: [],
        circle: [contour.center.x, contour.center.y, contour.radius],
      }
    : {
        type: 'LWPOLYLINE',
        layer,
        closed: true,
        vertices: contour.vertices.map(({ x, y, bulge }) => [x, y, bulge] as const),
        circle: null,
      };

/**
 * The part that comes off the bed when a cut of this width follows the drawn line with no compensation at
 * all: the outline shrinks by half of it, holes grow by half of it.
 */
function cutUncompensated(jig: Jig, name: string, kerf: number): MeasuredPart {
  const piece = jig.pieces.find((one) => one.name === name);
  if (piece === undefined) throw new Error(`no piece ${name}`);
  const part = makePart(jig, piece, context.machine, STROKE_FONT).value;
  const entities = part.features.flatMap(({ operation, contour }) => {
    if (operation === 'engrave' || operation === 'pocket' || contour.kind === 'path') return [];
    const outer = operation === 'cut-outer';
    const left = kerf === 0 ? [contour] : offsetContour(contour, (outer ? -1 : 1) * (kerf / 2)).value;
    return left.map((cut) => entity(cut, outer ? 'CUT_OUTSIDE' : 'CUT_INSIDE'));
  });
  return measuredPart(entities);
}

const overhangsWith = (jig: Jig, { backBevel, frontThickness }: Setup, kerf: number): readonly number[] =>
  jigOverhangs({
    kind: jig.kind,
    hand: jig.hand,
    backBevel,
    frontThickness,
    sheetThickness: context.machine.sheet.thickness,
    outside: -kerf / 2,
    part: (name) => cutUncompensated(jig, name, kerf),
    copies: (name) => jig.pieces.find((piece) => piece.name === name)?.copies ?? 0,
  });

const side = (given: Partial<Setup>) => setup({ edge: 'left', edgeLength: 170, ...given });

const kerfs = fc.double({ min: 0.02, max: 0.6, noNaN: true });

/** mm. Flattening of arcs in the measure, and float noise. */
const WITHIN = 1e-6;

describe('the kerf cancels', () => {
  property.prop([fc.double({ min: -15, max: 80, noNaN: true }), kerfs], { seed: 20_261_128, numRuns: 150 })(
    'in the step profile: whatever the cut takes, the step is the overhang',
    (overhang, kerf) => {
      const flank = side({ overhang });
      const jig = stepProfile.build('P1', [flank], context);
      for (const width of [0, kerf]) {
        const [measured = Number.NaN] = overhangsWith(jig, flank, width);
        expect(Math.abs(measured - overhang)).toBeLessThan(WITHIN);
      }
    },
  );

  property.prop([fc.double({ min: 12, max: 80, noNaN: true }), kerfs], { seed: 20_261_129, numRuns: 40 })(
    'in fences and spacers: plate and lip move alike about the centres of their holes',
    (overhang, kerf) => {
      const bottom = setup({ overhang });
      const flank = side({ overhang });
      const other = side({ overhang: overhang + 10 });
      const jigs: readonly (readonly [Jig, readonly number[]])[] = [
        [bottomFence.build('B1', [bottom], context), [overhang]],
        [sideSpacer.build('S1', [flank], context), [overhang]],
        [sideSpacer.build('S2', [flank, other], context), [overhang + 10, overhang]],
        [cornerFence.build('C1', [bottom, side({ overhang: 20 })], context), [overhang, 20]],
      ];
      for (const [jig, wanted] of jigs) {
        const measured = overhangsWith(jig, bottom, kerf);
        for (const [index, value] of wanted.entries()) {
          expect(Math.abs((measured[index] ?? Number.NaN) - value)).toBeLessThan(WITHIN);
        }
      }
    },
  );

  test('and every jig states so: sensitivity to kerf 0, with the reason', () => {
    for (const jig of [
      bottomFence.build('B1', [setup()], context),
      sideSpacer.build('S1', [side({ overhang: 30 })], context),
      stepProfile.build('P1', [side({ overhang: 3 })], context),
      cornerFence.build('C1', [setup(), side({ overhang: 20 })], context),
    ]) {
      expect(jig.sensitivity.kerf).toBe(0);
      expect(jig.sensitivity.why).toMatch(/kerf 0: .*the same way/);
    }
  });
});

describe('the sheet thickness', () => {
  property.prop(
    [fc.double({ min: 0, max: 8, noNaN: true }), fc.double({ min: -0.4, max: 0.4, noNaN: true })],
    { seed: 20_261_130, numRuns: 100 },
  )(
    'changes the overhang of a fence on a bevelled edge as much as its sensitivity says',
    (backBevel, off) => {
      const bottom = setup({ backBevel });
      const jig = bottomFence.build('B1', [bottom], context);
      const measuredWith = (sheetThickness: number) =>
        jigOverhangs({
          kind: jig.kind,
          hand: null,
          backBevel,
          frontThickness: bottom.frontThickness,
          sheetThickness,
          outside: 0,
          part: (name) => cutUncompensated(jig, name, 0),
          copies: (name) => jig.pieces.find((piece) => piece.name === name)?.copies ?? 0,
        })[0] ?? Number.NaN;
      const nominal = context.machine.sheet.thickness;
      const change = measuredWith(nominal + off) - measuredWith(nominal);
      expect(Math.abs(change - jig.sensitivity.sheetThickness * off)).toBeLessThan(WITHIN);
    },
  );

  test('does not change a step profile, whose lip is cut and not stacked', () => {
    const jig = stepProfile.build('P1', [side({ overhang: 3, backBevel: 4 })], context);
    expect(jig.sensitivity.sheetThickness).toBe(0);
  });
});
