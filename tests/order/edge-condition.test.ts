import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseEdgeCondition, writeEdgeCondition } from '../../core/order/edge-condition.ts';
import type { EdgeCondition } from '../../core/order/types.ts';
import { anyCondition } from './arbitraries.ts';

const SEED = 20_310_524;

const parse = (text: string): EdgeCondition | string => {
  const result = parseEdgeCondition(text, { unit: 'in' });
  return result.ok ? result.condition : result.reason;
};

const FORMS = 'inset GAP, lap OVERLAY, cover W [reveal R], share W gap G [neighbor N]';
const MEMBERS = 'stile, shared-stile, top-rail, mid-rail, bottom-rail';

describe('parseEdgeCondition', () => {
  test.each<[string, EdgeCondition]>([
    ['inset 3/32', { kind: 'inset', gap: 2.38125 }],
    ['inset 0', { kind: 'inset', gap: 0 }],
    ['lap 1-1/4', { kind: 'lap', overlay: 31.75 }],
    ['LAP 1 1/4"', { kind: 'lap', overlay: 31.75 }],
    ['lap 12,5 mm', { kind: 'lap', overlay: 12.5 }],
    ['cover 1-1/2', { kind: 'cover', member: 38.1, reveal: 0 }],
    ['cover 1½ reveal 1⁄16 in', { kind: 'cover', member: 38.1, reveal: 1.5875 }],
    ['Cover Bottom-Rail Reveal 0', { kind: 'cover', member: 'bottom-rail', reveal: 0 }],
    ['cover bottom rail', { kind: 'cover', member: 'bottom-rail', reveal: 0 }],
    ['cover bottom_rail reveal 0', { kind: 'cover', member: 'bottom-rail', reveal: 0 }],
    ['share 1-1/2 gap 1/8', { kind: 'share', member: 38.1, gap: 3.175 }],
    ['share 1-1/2 gap 1/8 neighbor 11/16', { kind: 'share', member: 38.1, gap: 3.175, neighborLap: 17.4625 }],
    [
      'share  1-1/2\u00a0in  neighbour 11/16  gap 1/8',
      { kind: 'share', member: 38.1, gap: 3.175, neighborLap: 17.4625 },
    ],
    [
      'share mid-rail gap 1/8 neighbor 1/8',
      { kind: 'share', member: 'mid-rail', gap: 3.175, neighborLap: 3.175 },
    ],
    ['share 0 gap 3 mm', { kind: 'share', member: 0, gap: 3 }],
    [
      'share mid-rail gap 3 mm neighbor -1.5 mm',
      { kind: 'share', member: 'mid-rail', gap: 3, neighborLap: -1.5 },
    ],
  ])('reads %j', (text, expected) => {
    expect(parse(text)).toEqual(expected);
  });

  test.each([
    ['', `an edge begins with inset, lap, cover or share; write one of: ${FORMS}`],
    ['1/8', `an edge begins with inset, lap, cover or share; write one of: ${FORMS}`],
    [
      'shared 1-1/2 gap 1/8',
      `an edge begins with inset, lap, cover or share; write one of: ${FORMS} (did you mean share?)`,
    ],
    ['inset', 'the gap is missing: nothing is written; write a length such as 1-7/16 in'],
    ['inset -1/8', 'the gap “-1/8” is refused: the length is negative; write one of 0 or more'],
    ['inset 3/0', 'the gap “3/0” is refused: the fraction has a denominator of 0; write one such as 7/16'],
    ['lap -1/8', 'the overlay “-1/8” is refused: the length is negative; write one of 0 or more'],
    ['lap 1/4 gap 1/8', 'lap takes no gap; write lap OVERLAY'],
    ['inset 1/8 reveal 1/8', 'inset takes no reveal; write inset GAP'],
    ['cover', 'the width is missing: nothing is written; write a length such as 1-7/16 in'],
    ['cover 0', 'the width “0” is refused: the length is 0; write one above 0'],
    [
      'cover botom-rail',
      `“botom-rail” is no member; write a width or one of ${MEMBERS} (did you mean bottom-rail?)`,
    ],
    ['cover 1-1/2 reveal', 'the reveal is missing: nothing is written; write a length such as 1-7/16 in'],
    [
      'cover 1 reveal 1-1/8',
      'the reveal is wider than the member; write a reveal of the width at most, or inset GAP',
    ],
    ['cover 1 neighbor 1/8', 'cover takes no neighbor; write cover W [reveal R]'],
    ['cover 1 reveal 1/8 reveal 1/8', 'reveal stands twice; write cover W [reveal R]'],
    ['share 1-1/2', 'share needs a gap; write share W gap G [neighbor N]'],
    ['share gap 1/8', 'the width is missing: nothing is written; write a length such as 1-7/16 in'],
    ['share panel gap 1/8', `“panel” is no member; write a width or one of ${MEMBERS}`],
    [
      'share 1-1/2 gap 1/8 neighbor x',
      "the neighbor's lap “x” is refused: words are not read; write a number with in, mm or cm, such as 1-7/16 in",
    ],
  ])('refuses %j', (text, reason) => {
    expect(parse(text)).toBe(reason);
  });

  test('parseEdgeCondition(writeEdgeCondition(c)) is c, whatever unit bare numbers have', () => {
    fc.assert(
      fc.property(
        anyCondition,
        fc.constantFrom('in', 'mm'),
        fc.constantFrom('in', 'mm'),
        (condition, unit, bare) => {
          const text = writeEdgeCondition(condition, unit);
          expect(parseEdgeCondition(text, { unit: bare }), `read from ${text}`).toEqual({
            ok: true,
            condition,
          });
        },
      ),
      {
        seed: SEED,
        numRuns: 10_000,
      },
    );
  });
});
