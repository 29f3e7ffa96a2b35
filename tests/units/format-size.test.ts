import { describe, expect, test } from 'vitest';
import { formatSize } from '../../core/units/format-size.ts';

describe('formatSize', () => {
  test('names inches at both numbers, millimetres once', () => {
    expect(formatSize(444.5, 149.225, 'in')).toBe('17 1/2" × 5 7/8"');
    expect(formatSize(444.5, 149.225, 'mm')).toBe('444.5 × 149.23 mm');
  });
});
