import { describe, expect, test } from 'vitest';
import { ORDER_COLUMNS } from '../../core/order/columns.ts';
import { didYouMean, suggest } from '../../core/order/suggest.ts';

describe('suggest', () => {
  test.each([
    ['opning_w', 'opening_w'],
    ['openign_h', 'opening_h'],
    ['cabnet', 'cabinet'],
    ['QTYS', 'qty'],
    ['postion', 'position'],
    ['opening_width', 'opening_w'],
    ['box_widht', 'box_w'],
    ['colum', 'column'],
    ['colour', undefined],
    ['depth', undefined],
    ['x', undefined],
    ['', undefined],
  ])('suggest(%j) is %j', (typed, expected) => {
    expect(suggest(typed, ORDER_COLUMNS)).toBe(expected);
  });

  test('suggest(a word one letter off two words) is the first of them', () => {
    expect(suggest('lop', ['lap', 'top', 'drawer'])).toBe('lap');
  });

  test('didYouMean ends a clause, or is nothing', () => {
    expect(didYouMean('slb', ['slab', 'five-piece'])).toBe(' (did you mean slab?)');
    expect(didYouMean('shaker', ['slab', 'five-piece'])).toBe('');
  });
});
