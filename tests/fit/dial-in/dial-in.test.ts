import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import type { Move } from '../../../core/fit/budget/places.ts';
import { dialIn as dialInOrNot } from '../../../core/fit/dial-in/dial-in.ts';
import type { DialIn, SeenGaps } from '../../../core/fit/dial-in/types.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { fitOf, present, standard, withAdjusters, type Ranges } from '../budget/fits.ts';
import { hang, NO_MISHAPS, type Mishaps } from '../budget/hang.ts';

const dialIn = (...of: Parameters<typeof dialInOrNot>) => {
  const { value, findings } = dialInOrNot(...of);
  return { value: present(value), findings };
};

const WIDE: Ranges = { height: [-20, 20], side: [-20, 20], depth: [-20, 20], tilt: [-20, 20] };
const wide = withAdjusters(standard, WIDE);
const STILL: Move = { side: 0, heightLeft: 0, heightRight: 0 };

/** An inset front, 3/32 in (2.38125 mm) all around. */
const inset = fitOf({ style: 'inset', openingW: 500, openingH: 200 }, wide);

/** The gaps that someone reads at a front that is hung out of corner points, without any linear model. */
function readGaps(fit: DrawerFit, mishaps: Partial<Mishaps>, move: Move): SeenGaps {
  const measured = hang(fit, { ...NO_MISHAPS, ...mishaps }, move, 'left');
  const at = (corner: string, side: string, end: string) => ({
    side: measured.get(`${side} ${corner}`) ?? 0,
    end: measured.get(`${end} ${corner}`) ?? 0,
  });
  return {
    topLeft: at('topLeft', 'left', 'top'),
    topRight: at('topRight', 'right', 'top'),
    bottomLeft: at('bottomLeft', 'left', 'bottom'),
    bottomRight: at('bottomRight', 'right', 'bottom'),
  };
}

/** A front as hung is low by the start-low allowance of 2.38125 mm: the same on both sides. */
const raised = (move: Partial<Move>): Move => ({
  side: move.side ?? 0,
  heightLeft: 2.38125 + (move.heightLeft ?? 0),
  heightRight: 2.38125 + (move.heightRight ?? 0),
});

const byName = ({ moves }: DialIn) => Object.fromEntries(moves.map(({ adjuster, by }) => [adjuster, by]));

const small = fc.double({ min: -1, max: 1, noNaN: true });

describe('dialIn', () => {
  test.prop([fc.record({ side: small, heightLeft: small, heightRight: small })], {
    seed: 20_261_125,
    numRuns: 200,
  })('the moves bring a front that is misplaced and turned into its gaps', (misplaced) => {
    const before = raised(misplaced);
    const seen = readGaps(inset, {}, before);
    // Gaps are lengths from 0, so only misplacements that leave one everywhere can be read.
    const { value, findings } = dialIn(seen, inset, wide);
    expect(findings).toEqual([]);
    const by = byName(value);
    const after = readGaps(
      inset,
      {},
      {
        side: before.side + (by.side ?? 0),
        heightLeft: before.heightLeft + (by.heightLeft ?? 0),
        heightRight: before.heightRight + (by.heightRight ?? 0),
      },
    );
    for (const reading of Object.values(after)) {
      // What is left is of second order in a turn of at most 2 mm over 490.
      expect(reading.side).toBeCloseTo(2.38125, 2);
      expect(reading.end).toBeCloseTo(2.38125, 2);
    }
    expect(value.left ?? 1).toBeLessThan(0.01);
    expect(value.incurable).toEqual([]);
  });

  test('a front as hung is raised by its start-low allowance, both sides alike, and by nothing else', () => {
    const { value } = dialIn(readGaps(inset, {}, STILL), inset, wide);
    expect(value.moves.map(({ adjuster, by }) => [adjuster, by])).toEqual([
      ['heightLeft', expect.closeTo(2.38125, 6)],
      ['heightRight', expect.closeTo(2.38125, 6)],
    ]);
    expect(value.moves[0]?.words).toBe('Raise the left side by 2.38 mm.');
  });

  test('heights come before the side, and depth and tilt last', () => {
    const seen = readGaps(inset, {}, raised({ side: 0.5, heightLeft: -0.4, heightRight: 0.3 }));
    const proud = Object.fromEntries(
      Object.entries(seen).map(([corner, gaps]) => [
        corner,
        { ...gaps, proud: corner.startsWith('top') ? 1.5 : -0.5 },
      ]),
    );
    const { value } = dialIn(proud, inset, wide);
    expect(value.moves.map(({ adjuster }) => adjuster)).toEqual([
      'heightLeft',
      'heightRight',
      'side',
      'depth',
      'tilt',
    ]);
    expect(byName(value)).toMatchObject({ depth: expect.closeTo(0.5, 6), tilt: expect.closeTo(-2, 6) });
    expect(value.moves.map(({ words }) => words.split(' by ')[0])).toEqual([
      'Raise the left side',
      'Lower the right side',
      'Move the front to the left',
      'Move the front out',
      'Lean the top of the front in',
    ]);
    for (const reading of Object.values(value.after)) expect(reading.proud).toBeCloseTo(0, 6);
  });

  test('clicks are whole, turns are eighths, and the gaps left are those after rounding', () => {
    const seen = readGaps(inset, {}, raised({ side: 0.62, heightLeft: -0.7, heightRight: -0.7 }));
    const clicked = dialIn(seen, inset, withAdjusters(standard, WIDE, { mm: 0.5, name: 'click' })).value;
    expect(clicked.moves.map(({ adjuster, by, steps }) => [adjuster, by, steps?.count])).toEqual([
      ['heightLeft', 0.5, 1],
      ['heightRight', 0.5, 1],
      ['side', -0.5, -1],
    ]);
    expect(clicked.moves.map(({ words }) => words)).toEqual([
      'Raise the left side by 0.5 mm: 1 click.',
      'Raise the right side by 0.5 mm: 1 click.',
      'Move the front to the left by 0.5 mm: 1 click.',
    ]);
    expect(clicked.after.bottomLeft?.end).toBeCloseTo(2.38125 - 0.2, 6);
    expect(clicked.after.topLeft?.side).toBeCloseTo(2.38125 + 0.12, 6);
    expect(clicked.left).toBeCloseTo(0.2, 6);

    const turned = dialIn(seen, inset, withAdjusters(standard, WIDE, { mm: 2, name: 'turn' })).value;
    // 0.7 mm are 2.8 eighths of a turn of 2 mm, 0.62 mm are 2.48 of them.
    expect(turned.moves.map(({ by, steps }) => [by, steps?.count])).toEqual([
      [0.75, 0.375],
      [0.75, 0.375],
      [-0.5, -0.25],
    ]);
    expect(turned.moves[0]?.words).toBe('Raise the left side by 0.75 mm: 3/8 turn.');
  });

  test('never rounds past the end of a range', () => {
    const seen = readGaps(inset, {}, raised({ side: 1.6 }));
    const own = withAdjusters(standard, { ...WIDE, side: [-1.4, 1.4] }, { mm: 1, name: 'click' });
    const { value } = dialIn(seen, inset, own);
    expect(byName(value)).toEqual({ side: -1 });
  });

  test('stays inside what is left of the range, and says what is missing', () => {
    const own = withAdjusters(standard, { height: [0, 3], side: [-1.5, 1.5] });
    const seen = readGaps(inset, {}, raised({ side: 0.9, heightLeft: -2.3, heightRight: -2.3 }));
    const now = { ...STILL, heightLeft: 2, heightRight: 2, depth: 0, tilt: 0 };
    const { value } = dialIn(seen, inset, own, now);
    expect(byName(value)).toEqual({
      heightLeft: expect.closeTo(1, 6),
      heightRight: expect.closeTo(1, 6),
      side: expect.closeTo(-0.9, 6),
    });
    expect(value.incurable.map(({ what, amount }) => [what, amount])).toEqual([
      ['range', expect.closeTo(1.3, 6)],
      ['range', expect.closeTo(1.3, 6)],
    ]);
    expect(value.incurable[0]?.words).toContain(
      'Raise the left side by 2.3 mm is what it takes; the slide has 1 mm left',
    );
    expect(value.left).toBeCloseTo(1.3, 6);
  });

  it.for([
    ['width', { frontWider: 1 }, -1, '1 mm too wide'],
    ['width', { openingWider: 0.8 }, 0.8, '0.8 mm too narrow'],
    ['height', { frontHigher: 1.2 }, -1.2, '1.2 mm too high'],
    ['height', { openingHigher: 0.6 }, 0.6, '0.6 mm too low'],
    ['out of square', { lean: 1.5 }, 1.5, 'mm to the right against its rails'],
    ['out of square', { lean: -1.5 }, -1.5, 'mm to the left against its rails'],
  ] as const)('no adjuster cures %s: %o', ([what, mishaps, amount, words]) => {
    const { value } = dialIn(readGaps(inset, mishaps, raised({ heightLeft: 0.3, side: 0.2 })), inset, wide);
    expect(value.incurable.map((one) => one.what)).toEqual([what]);
    // The lean is told over the front's height between its corners, the mishap over the opening's.
    expect(Math.abs((value.incurable[0]?.amount ?? 0) - amount)).toBeLessThan(0.06);
    expect(value.incurable[0]?.words).toContain(words);
  });

  test('a front that is too wide is put in the middle, with half of it missing at either side', () => {
    const { value } = dialIn(readGaps(inset, { frontWider: 1 }, raised({})), inset, wide);
    expect(byName(value)).toEqual({ side: expect.closeTo(-0.5, 6) });
    expect(value.after.bottomLeft?.side).toBeCloseTo(2.38125 - 0.5, 6);
    expect(value.after.topRight?.side).toBeCloseTo(2.38125 - 0.5, 6);
  });

  test('tells a taper and a twist, which no move touches', () => {
    const g = 2.38125;
    const tapered = {
      topLeft: { side: g + 0.3, end: g, proud: 0.6 },
      topRight: { side: g + 0.3, end: g },
      bottomLeft: { side: g - 0.3, end: g, proud: 0 },
      bottomRight: { side: g - 0.3, end: g, proud: 0 },
    };
    const { value } = dialIn(tapered, inset, wide);
    expect(value.incurable).toMatchObject([{ what: 'side taper', amount: expect.closeTo(1.2, 9) }]);
    const twisted = dialIn(
      { ...tapered, topRight: { side: g + 0.3, end: g, proud: -0.6 } },
      inset,
      wide,
    ).value;
    expect(twisted.incurable.map(({ what }) => what)).toEqual(['side taper', 'one side out', 'twist']);
  });

  test('with one reading moves both heights alike, and says that a turn was not read', () => {
    const { value } = dialIn({ bottomLeft: { end: 1.38125 } }, inset, wide);
    expect(byName(value)).toEqual({ heightLeft: expect.closeTo(1, 6), heightRight: expect.closeTo(1, 6) });
    expect(value.notes).toEqual([
      'No gap was read at the sides: the side adjuster is left alone.',
      'Read both ends of one edge to tell whether the front is turned; it is taken to be level.',
    ]);
  });

  test('with side readings alone takes the turn out by different heights', () => {
    const turned = readGaps(inset, {}, raised({ heightRight: 1 }));
    const sides = {
      topLeft: { side: turned.topLeft?.side ?? 0 },
      bottomLeft: { side: turned.bottomLeft?.side ?? 0 },
    };
    const by = byName(dialIn(sides, inset, wide).value);
    expect((by.heightRight ?? 0) - (by.heightLeft ?? 0)).toBeCloseTo(-1, 2);
    expect((by.heightRight ?? 0) + (by.heightLeft ?? 0)).toBeCloseTo(0, 6);
  });

  test('gives nothing for a fit that has no box', () => {
    const none = fitOf({ openingW: 5 }, wide);
    expect(dialInOrNot({ topLeft: { end: 1 } }, none, wide)).toEqual({ value: null, findings: [] });
  });

  test('with no readings moves nothing', () => {
    const { value } = dialIn({}, inset, wide);
    expect(value).toEqual({ moves: [], after: {}, left: null, incurable: [], notes: [] });
  });

  test('refuses a reading that is no gap, says what would be one, and uses the others', () => {
    const { value, findings } = dialIn(
      {
        bottomLeft: { end: -1 },
        bottomRight: { end: Number.NaN },
        topLeft: { end: 2.88125, proud: Infinity },
      },
      inset,
      wide,
    );
    expect(findings.map(({ code, severity, values }) => [code, severity, values.corner])).toEqual([
      ['fit/reading', 'error', 'bottomLeft'],
      ['fit/reading', 'error', 'bottomRight'],
      ['fit/reading', 'error', 'topLeft'],
    ]);
    expect(findings[0]?.message).toContain('a gap is a length from 0');
    expect(byName(value)).toEqual({
      heightLeft: expect.closeTo(0.5, 6),
      heightRight: expect.closeTo(0.5, 6),
    });
  });

  test('does not use a reading at an edge that laps, and says so', () => {
    const lapped = fitOf({ edges: { left: { kind: 'lap', overlay: 10 } } });
    const { value, findings } = dialIn({ topLeft: { side: 1 } }, lapped, wide);
    expect([value.moves, findings]).toEqual([[], []]);
    expect(value.notes).toEqual([
      'The front laps a member at its left edge and shows no gap there; that reading is not used.',
    ]);
  });
});
