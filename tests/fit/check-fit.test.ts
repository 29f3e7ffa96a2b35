import { describe, expect, test } from 'vitest';
import { fitOrder } from '../../core/fit/fit-order.ts';
import type { Drawer } from '../../core/order/types.ts';
import { drawer } from '../rules/drawers.ts';
import { readStandard } from '../rules/read-standard.ts';

const standard = readStandard('face-frame-undermount.json');
const INCH = 25.4;

/** What is found of drawers of 18 x 6 in openings, but for what is given; as `severity code: message`. */
function findingsOf(...given: readonly Partial<Drawer>[]): readonly string[] {
  const drawers = given.map((fields, index) =>
    drawer({
      row: index + 2,
      drawer: `d${index + 1}`,
      style: 'full overlay',
      openingW: 18 * INCH,
      openingH: 6 * INCH,
      ...fields,
    }),
  );
  const { findings } = fitOrder({ name: 'check', unit: 'in', drawers }, standard);
  return findings.map(({ severity, code, message }) => `${severity} ${code}: ${message}`);
}

describe('fitOrder tells impossible and suspicious geometry by the drawer and the numbers', () => {
  test('nothing is found of a plain drawer', () => {
    expect(findingsOf({})).toEqual([]);
  });

  test('a box that is as wide as its opening cannot enter it', () => {
    expect(findingsOf({ boxW: 18 * INCH })).toEqual([
      'error fit/box-too-wide: Drawer B1 / d1, row 2: the box cannot enter its opening: it is 18" wide, the opening 18"; with the slide\'s clearance it may be 17 5/8".',
    ]);
  });

  test('a box of another width than the slide needs is a warning, and its own clearance sets the overhang', () => {
    expect(findingsOf({ boxW: 17.5 * INCH })).toEqual([
      'warning fit/box-width: Drawer B1 / d1, row 2: the box is 17 1/2" wide and leaves 1/4" a side; the undermount slide needs 3/16", a box of 17 5/8".',
    ]);
  });

  test('a box that is too high cannot enter its opening', () => {
    expect(findingsOf({ boxH: 5.5 * INCH })).toEqual([
      'error fit/box-too-high: Drawer B1 / d1, row 2: the box cannot enter its opening: 5 1/2" high and lifted 1/2", in an opening of 6"; with the top clearance it may be 5".',
    ]);
  });

  test('a box that takes the top clearance is a warning', () => {
    expect(findingsOf({ boxH: 5.25 * INCH })).toEqual([
      'warning fit/box-height: Drawer B1 / d1, row 2: the box is 5 1/4" high and leaves 1/4" above it; the shop standard wants 1/2".',
    ]);
  });

  test('millimetres that were typed into an order in inches are told as what they may be', () => {
    const found = findingsOf({ openingW: 381 * INCH, openingH: 114 * INCH });
    expect(found).toEqual([
      'warning fit/opening-large: Drawer B1 / d1, row 2: the opening is 381" wide, more than drawers are made for; if it was measured in millimetres, write 381 mm.',
      'warning fit/opening-large: Drawer B1 / d1, row 2: the opening is 114" high, more than drawers are made for; if it was measured in millimetres, write 114 mm.',
    ]);
    expect(findingsOf({ openingW: 48 * INCH })).toEqual([]);
  });

  test('a box whose sides leave no room between them is an error', () => {
    expect(findingsOf({ openingW: 1.5 * INCH })).toContain(
      'error fit/box-no-inside: Drawer B1 / d1, row 2: the box is 1 1/8" wide, and its two sides of 5/8" leave no room between them.',
    );
  });

  test('an opening that leaves no box is an error', () => {
    expect(findingsOf({ openingH: INCH })).toContain(
      'error fit/no-box: Drawer B1 / d1, row 2: no box fits: an opening of 18" x 1" less running clearance, lift and top clearance leaves 17 5/8" x 0".',
    );
  });

  test('a front that is smaller than its box is an error', () => {
    expect(findingsOf({ style: 'inset', frontW: 17 * INCH })).toContain(
      'error fit/front-smaller: Drawer B1 / d1, row 2: the front, 17" x 5 13/16", is smaller than its box, 17 5/8" x 5".',
    );
  });

  test('a box that stands proud of one edge is a warning', () => {
    expect(findingsOf({ style: 'inset', edges: { left: { kind: 'inset', gap: INCH / 4 } } })).toEqual([
      'warning fit/box-proud: Drawer B1 / d1, row 2: the box stands 1/16" proud of the front\'s left edge.',
    ]);
  });

  test('a front of another size than opening and overlays make it is a warning', () => {
    expect(findingsOf({ frontW: 20 * INCH })).toEqual([
      'warning fit/front-size: Drawer B1 / d1, row 2: the front is 20" wide; opening and overlays make it 20 1/2", 1/2" more.',
    ]);
  });

  test('a gap under zero is an error, beside the size that makes it so', () => {
    expect(findingsOf({ style: 'inset', frontW: 18.25 * INCH })).toEqual([
      'warning fit/front-size: Drawer B1 / d1, row 2: the front is 18 1/4" wide; opening and overlays make it 17 13/16", 7/16" less.',
      'error fit/gap-negative: Drawer B1 / d1, row 2: the gap at the front\'s left edge would be -1/8": the front is too large for its place.',
      'error fit/gap-negative: Drawer B1 / d1, row 2: the gap at the front\'s right edge would be -1/8": the front is too large for its place.',
    ]);
  });

  test('a small gap is a warning', () => {
    const gap = INCH / 64;
    expect(findingsOf({ style: 'inset', edges: { top: { kind: 'inset', gap } } })).toEqual([
      'warning fit/gap-small: Drawer B1 / d1, row 2: the gap at the front\'s top edge is 1/64"; the shop standard\'s smallest is 1/32".',
    ]);
  });

  test('a front that laps past its member is a warning', () => {
    expect(findingsOf({ edges: { left: { kind: 'lap', overlay: 2 * INCH } } })).toEqual([
      'warning fit/overlay-past-member: Drawer B1 / d1, row 2: the front laps 2" at its left edge, past the 1 1/2" member there.',
    ]);
  });

  test('fronts that collide across the rail between them are an error that names both', () => {
    const above: Partial<Drawer> = { position: 'top', first: true, last: false };
    const below: Partial<Drawer> = { position: 'bottom', first: false, last: true };
    expect(findingsOf({ ...above, edges: { bottom: { kind: 'lap', overlay: 0.5 * INCH } } }, below)).toEqual([
      'error fit/collision: Drawer B1 / d1, row 2: the front overlaps that of B1 / d2 by 1/4" across the member at its bottom edge.',
    ]);
  });

  test('fronts that collide across a shared stile are an error that names both', () => {
    const edges = { right: { kind: 'lap', overlay: INCH } } as const;
    expect(findingsOf({ column: 1, edges }, { column: 2 })).toEqual([
      'error fit/collision: Drawer B1 / d1, row 2: the front overlaps that of B1 / d2 by 3/16" across the member at its right edge.',
    ]);
  });

  test('fronts in another cabinet of the same place do not collide', () => {
    expect(findingsOf({}, { cabinet: 'B2' })).toEqual([]);
  });

  test('a five-piece front without room for its panel is an error', () => {
    expect(findingsOf({ front: { kind: 'five-piece', memberWidth: 5 * INCH } })).toEqual([
      'error fit/no-panel: Drawer B1 / d1, row 2: a five-piece front of 20 1/2" x 8 3/4" has no room for a panel between stiles and rails of 5".',
    ]);
  });

  test('a five-piece front is judged by the widths of both its stiles and its rails', () => {
    const of = (stile: number, rail: number) =>
      findingsOf({ front: { kind: 'five-piece', memberWidth: stile * INCH, railWidth: rail * INCH } });
    // 20 1/2 by 8 3/4 in.
    expect(of(5, 2)).toEqual([]);
    expect(of(2, 4.375)).toEqual([
      'error fit/no-panel: Drawer B1 / d1, row 2: a five-piece front of 20 1/2" x 8 3/4" has no room for a panel between stiles of 2" and rails of 4 3/8".',
    ]);
    expect(of(10.25, 1)[0]).toMatch(/stiles of 10 1\/4" and rails of 1"/);
  });

  test('a style that the standard does not have leaves its drawer out, and says so', () => {
    expect(findingsOf({ style: 'flush' })[0]).toMatch(/^error rules\/style-unknown: Drawer B1 \/ d1/);
  });
});

describe('fitOrder takes members from what the cells say', () => {
  const column = (index: number, edges: Drawer['edges']): Partial<Drawer> => ({ column: index, edges });

  test('a shared stile that both cells call 2 in wide is 2 in wide', () => {
    const share = { kind: 'share', member: 2 * INCH, gap: INCH / 8 } as const;
    expect(findingsOf(column(1, { right: share }), column(2, { left: share }))).toEqual([]);
  });

  test('a rail that two rows call by different widths is told', () => {
    const share = (member: number) => ({ kind: 'share', member, gap: INCH / 8 }) as const;
    const found = findingsOf(
      { position: 'top', last: false, edges: { bottom: share(3 * INCH) } },
      { first: false, edges: { top: share(2 * INCH) } },
    );
    expect(found).toContain(
      'warning fit/member-differs: Drawer B1 / d2, row 3: its top edge meets a member of 2", the bottom edge of B1 / d1 calls the same member 3".',
    );
  });

  test('openings of different widths in one column are told', () => {
    const found = findingsOf({ position: 'top', last: false }, { first: false, openingW: 12 * INCH });
    expect(found[0]).toMatch(
      /^warning fit\/column-width: Drawer B1 \/ d2, row 3: its opening is 12" wide, that of B1 \/ d1 above it 18"/,
    );
  });

  test('a given front that is wider laps half of the difference on either side, so that the overhangs add up', () => {
    const { value } = fitOrder(
      {
        name: 'check',
        unit: 'in',
        drawers: [
          drawer({ style: 'full overlay', openingW: 18 * INCH, openingH: 6 * INCH, frontW: 21 * INCH }),
        ],
      },
      standard,
    );
    const [fit] = value;
    expect((fit?.overhang.left ?? 0) / INCH).toBeCloseTo(1 + 7 / 16 + 1 / 4, 9);
    expect((fit?.overhang.left ?? 0) + (fit?.boxW ?? 0) + (fit?.overhang.right ?? 0)).toBeCloseTo(
      21 * INCH,
      9,
    );
  });

  test('tells lengths in the unit of the order', () => {
    const drawers = [drawer({ style: 'full overlay', openingW: 400, openingH: 150, boxW: 400 })];
    const [finding] = fitOrder({ name: 'check', unit: 'mm', drawers }, standard).findings;
    expect(finding?.message).toContain('it is 400 mm wide, the opening 400 mm');
  });
});
