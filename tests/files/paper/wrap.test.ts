import { describe, expect, test } from 'vitest';
import { shorten } from '../../../core/files/paper/page/shorten.ts';
import { wrap } from '../../../core/files/paper/page/wrap.ts';

/** A font whose letters are all half as wide as it is high. */
const measure = (text: string, size: number): number => (text.length * size) / 2;

describe('wrap', () => {
  test('wrap breaks at spaces so that no line is wider than the column, and loses no word', () => {
    const text = 'Stand the box on the back of the front, its front down';
    const lines = wrap(text, 20, 2, measure);
    expect(lines.join(' ')).toBe(text);
    expect(Math.max(...lines.map((line) => measure(line, 2)))).toBeLessThanOrEqual(20);
  });

  test('wrap keeps a length in one piece', () => {
    expect(wrap('left 1 7/16" right', 9, 2, measure)).toEqual(['left', '1 7/16"', 'right']);
    expect(wrap('left 36.5 mm right', 9, 2, measure)).toEqual(['left', '36.5 mm', 'right']);
  });

  test('wrap gives a word that is wider than the column a line of its own', () => {
    expect(wrap('a counterclockwise b', 10, 2, measure)).toEqual(['a', 'counterclockwise', 'b']);
  });
});

describe('shorten', () => {
  test('shorten keeps what fits and ends the rest with an ellipsis', () => {
    expect(shorten('Reading room', 12, 2, measure)).toBe('Reading room');
    expect(shorten('Reading room', 9, 2, measure)).toBe('Reading…');
  });
});
