import { describe, expect, test } from 'vitest';
import { bitText } from '../../../core/files/paper/bit-text.ts';
import { EN } from '../../../core/files/paper/words/en.ts';

describe('bitText', () => {
  test.each([
    // 13/64 in is 5.159375 mm and 3/16 in is 4.7625 mm: the first is nearer to 5 mm.
    [5, 'in', '5 mm, or 13/64"'],
    [(3 / 32) * 25.4, 'in', '3/32"'],
    [(7 / 64) * 25.4, 'in', '7/64"'],
    [5, 'mm', '5 mm'],
    [2.5, 'mm', '2.5 mm'],
  ] as const)('bitText names a bit of %d mm in a shop of %s as one asks for it: %s', (mm, unit, said) => {
    expect(bitText(mm, unit, EN)).toBe(said);
  });
});
