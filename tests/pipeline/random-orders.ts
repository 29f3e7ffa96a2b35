import { fc } from '@fast-check/vitest';
import type { Drawer, Position } from '../../core/order/types.ts';

const INCH = 25.4;

/** mm, in thirty-seconds of an inch or in half millimetres, as shops measure. */
const length = (from: number, to: number) =>
  fc.oneof(
    fc
      .integer({ min: Math.ceil((from / INCH) * 32), max: Math.floor((to / INCH) * 32) })
      .map((n) => (n / 32) * INCH),
    fc.integer({ min: Math.ceil(from * 2), max: Math.floor(to * 2) }).map((n) => n / 2),
  );

const position = (index: number, count: number): Position => {
  if (index === count - 1) return 'bottom';
  return index === 0 ? 'top' : 'middle';
};

/** Stacks of one to four drawers, side by side in one to three columns, of one style to a cabinet. */
const cabinet = (styles: readonly string[], kinds: readonly string[]) =>
  fc
    .record({
      style: fc.constantFrom(...styles),
      kind: fc.option(fc.constantFrom(...kinds), { nil: undefined }),
      thickness: fc.option(length(16, 25), { nil: undefined }),
      qty: fc.integer({ min: 1, max: 5 }),
      width: length(230, 900),
      columns: fc.array(fc.array(length(90, 350), { minLength: 1, maxLength: 4 }), {
        minLength: 1,
        maxLength: 3,
      }),
    })
    .map(({ style, kind, thickness, qty, width, columns }) =>
      columns.flatMap((heights, column) =>
        heights.map((openingH, index): Omit<Drawer, 'row' | 'cabinet' | 'drawer'> => ({
          ...(kind === undefined ? {} : { cabinetKind: kind }),
          ...(thickness === undefined ? {} : { frontThickness: thickness }),
          column: column + 1,
          position: position(index, heights.length),
          first: index === 0,
          last: index === heights.length - 1,
          qty,
          style,
          openingW: width,
          openingH,
          edges: {},
          front: { kind: 'slab' },
        })),
      ),
    );

/** Drawers that a shop could be asked for, of a standard's styles and cabinet kinds. */
export const plausibleDrawers = (
  styles: readonly string[],
  kinds: readonly string[],
): fc.Arbitrary<readonly Drawer[]> =>
  fc
    .array(cabinet(styles, kinds), { minLength: 1, maxLength: 4 })
    .map((cabinets) =>
      cabinets.flatMap((drawers, index) =>
        drawers.map((drawer, at) => ({ ...drawer, cabinet: `B${index + 1}`, drawer: `d${at + 1}` })),
      ),
    )
    .map((drawers) => drawers.map((drawer, index) => ({ ...drawer, row: index + 2 })));
