import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseFrontConstruction, writeFrontConstruction } from '../../core/order/front-construction.ts';
import type { FrontConstruction } from '../../core/order/types.ts';
import { anyFront } from './arbitraries.ts';

const parse = (text: string): FrontConstruction | string => {
  const read = parseFrontConstruction(text, { unit: 'in' });
  return read.ok ? read.front : read.reason;
};

const FORM = 'five-piece W [rails R] [cope] [mitre] [thinnest T]';

describe('parseFrontConstruction', () => {
  test.each<[string, FrontConstruction]>([
    ['slab', { kind: 'slab' }],
    ['SLAB  thinnest 5/8', { kind: 'slab', thinnest: 15.875 }],
    ['five-piece 2-1/4', { kind: 'five-piece', memberWidth: 57.15 }],
    ['5 piece 60 mm', { kind: 'five-piece', memberWidth: 60 }],
    ['five_piece 2 1/4" rails 2', { kind: 'five-piece', memberWidth: 57.15, railWidth: 50.8 }],
    ['five-piece 2 rail 1-1/2', { kind: 'five-piece', memberWidth: 50.8, railWidth: 38.1 }],
    ['five-piece 2-1/4 mitre', { kind: 'five-piece', memberWidth: 57.15, joint: 'mitre' }],
    ['five-piece 2-1/4 Miter', { kind: 'five-piece', memberWidth: 57.15, joint: 'mitre' }],
    ['five-piece 2-1/4 cope', { kind: 'five-piece', memberWidth: 57.15, joint: 'cope' }],
    [
      'five-piece 2-1/4 thinnest 1/2 cope rails 2',
      { kind: 'five-piece', memberWidth: 57.15, railWidth: 50.8, joint: 'cope', thinnest: 12.7 },
    ],
  ])('reads %j', (text, front) => {
    expect(parse(text)).toEqual(front);
  });

  test.each([
    ['shaker', 'write slab, or five-piece and the width of its frame, such as five-piece 2-1/4 in'],
    [
      'slabs',
      'write slab, or five-piece and the width of its frame, such as five-piece 2-1/4 in (did you mean slab?)',
    ],
    ['slab 3/4', 'after slab stands “3/4”; write slab [thinnest T]'],
    ['slab mitre', 'slab takes no mitre; write slab [thinnest T]'],
    ['five-piece', 'the width of its frame is missing; write one, such as five-piece 2-1/4 in'],
    ['five-piece rails 2', 'the width of its frame is missing; write one, such as five-piece 2-1/4 in'],
    ['five-piece 2 rails 2 rails 3', `rails stands twice; write ${FORM}`],
    ['five-piece 2 mitre cope', 'its corners are coped or mitred, not both; keep one of cope and mitre'],
    ['five-piece 2 mitre 45', `after mitre stands “45”; write ${FORM}`],
    [
      'five-piece 2 thinnest',
      'the thinnest wood is missing: nothing is written; write a length such as 1-7/16 in',
    ],
    ['five-piece 2 rails 0', 'the width of its rails “0” is refused: the length is 0; write one above 0'],
    [
      'five-piece 2 with beads',
      'the width of its frame “2 with beads” is refused: words are not read; write a number with in, mm or cm, such as 1-7/16 in',
    ],
  ])('refuses %j', (text, reason) => {
    expect(parse(text)).toBe(reason);
  });
});

describe('writeFrontConstruction', () => {
  test('writes the clauses in one order', () => {
    expect(
      writeFrontConstruction(
        { kind: 'five-piece', memberWidth: 57.15, railWidth: 50.8, joint: 'cope', thinnest: 12.7 },
        'in',
      ),
    ).toBe('five-piece 2-1/4 in rails 2 in cope thinnest 1/2 in');
  });

  test('parseFrontConstruction(writeFrontConstruction(front)) is the front, in either unit', () => {
    fc.assert(
      fc.property(
        anyFront,
        fc.constantFrom('in' as const, 'mm' as const),
        fc.constantFrom('in' as const, 'mm' as const),
        (front, unit, other) => {
          const read = parseFrontConstruction(writeFrontConstruction(front, unit), { unit: other });
          expect(read).toEqual({ ok: true, front });
        },
      ),
      { seed: 20_310_533, numRuns: 1000 },
    );
  });
});
