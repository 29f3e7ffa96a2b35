import { existsSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import sans from '../../assets/stroke-font/sans.json' with { type: 'json' };
import { contourProblems } from '../../core/geometry/validate.ts';
import type { PathContour } from '../../core/geometry/types.ts';
import { parseStrokeFont } from '../../core/parts/parse-stroke-font.ts';
import { fractionLayout } from '../../core/parts/stroke-fractions.ts';
import type { StrokeFont } from '../../core/parts/stroke-font.ts';
import { strokeText, textWidth, type TextOptions } from '../../core/parts/stroke-text.ts';

const FONT = parseStrokeFont(sans);
const SEED = 62_951;
const AT: TextOptions = { capHeight: 5, at: { x: 0, y: 0 }, align: 'left' };

const range = (from: number, to: number): readonly string[] =>
  Array.from({ length: to - from + 1 }, (_, index) => String.fromCodePoint(from + index));

const ASCII = range(32, 126);
/** U+00C0 to U+00FF but for the signs × and ÷, and the two ordinals. */
const LATIN_1_LETTERS = [
  ...range(0xc0, 0xff).filter((letter) => letter !== '×' && letter !== '÷'),
  'ª',
  'º',
  'µ',
];
const SIGNS = Array.from('′″°⌀Ø±×½¼¾⅛⅜⅝⅞⁄←→↑↓');
const DIGITS = range(48, 57);

const drawn = (text: string, options: Partial<TextOptions> = {}): readonly PathContour[] =>
  strokeText(FONT, text, { ...AT, ...options }).value.contours;

interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

function boxOf(contours: readonly PathContour[]): Box {
  const points = contours.flatMap(({ vertices }) => vertices);
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

const sidesOf = (contours: readonly PathContour[]): readonly number[] =>
  contours.flatMap(({ vertices }) =>
    vertices
      .slice(1)
      .map(({ x, y }, index) => Math.hypot(x - (vertices[index]?.x ?? NaN), y - (vertices[index]?.y ?? NaN))),
  );

describe('the stroke font', () => {
  test.each([...ASCII, ...LATIN_1_LETTERS, ...SIGNS])('TXT-1: has %j', (character) => {
    const { value, findings } = strokeText(FONT, character, AT);
    expect(findings).toEqual([]);
    expect(value.contours.length > 0).toBe(character !== ' ');
    expect(value.width).toBeGreaterThan(0);
    for (const contour of value.contours) expect(contourProblems(contour)).toEqual([]);
  });

  test('TXT-1: no two characters look alike', () => {
    const shapes = new Map<string, string>();
    for (const character of new Set([...ASCII, ...LATIN_1_LETTERS, ...SIGNS])) {
      const shape = JSON.stringify(FONT.glyphs[character]?.strokes);
      expect(shapes.get(shape), `${character} looks like ${shapes.get(shape)}`).toBeUndefined();
      shapes.set(shape, character);
    }
  });

  test('TXT-1: accented letters are their letter with a mark above or below', () => {
    const pairs = [
      ['É', 'E'],
      ['ä', 'a'],
      ['ñ', 'n'],
      ['Å', 'A'],
      ['ü', 'u'],
      ['ç', 'c'],
      ['Ý', 'Y'],
    ] as const;
    for (const [accented, plain] of pairs) {
      const whole = FONT.glyphs[accented]?.strokes ?? [];
      const base = FONT.glyphs[plain]?.strokes ?? [];
      expect(whole.slice(0, base.length)).toEqual(base);
      expect(whole.length).toBeGreaterThan(base.length);
    }
  });

  test('TXT-2: the digits all have the same advance, raised and lowered ones too', () => {
    for (const digits of ['0123456789', '⁰¹²³⁴⁵⁶⁷⁸⁹', '₀₁₂₃₄₅₆₇₈₉']) {
      const advances = new Set(Array.from(digits, (digit) => FONT.glyphs[digit]?.advance));
      expect({ digits, advances: advances.size, missing: advances.has(undefined) }).toEqual({
        digits,
        advances: 1,
        missing: false,
      });
    }
    expect(textWidth(FONT, '11111', 3)).toBeCloseTo(textWidth(FONT, '08429', 3), 12);
  });

  test('TXT-2: no segment of any glyph is under 0.04 cap height', () => {
    for (const [character, { strokes }] of Object.entries(FONT.glyphs)) {
      for (const stroke of strokes) {
        for (const [index, [x, y]] of stroke.slice(1).entries()) {
          const [fromX, fromY] = stroke[index] ?? [NaN, NaN];
          const share = Math.hypot(x - fromX, y - fromY) / FONT.capHeight;
          expect(share >= 0.04, `${character}: a segment of ${share} cap heights`).toBe(true);
        }
      }
    }
  });

  test('TXT-2: the flat capitals stand on the baseline and reach the cap height', () => {
    for (const letter of 'ABDEFHIKLMNPRTXYZ') {
      const { bottom, top } = boxOf(drawn(letter, { capHeight: 10 }));
      expect({ letter, bottom, top }).toEqual({ letter, bottom: 0, top: 10 });
    }
  });

  test('TXT-2: the licence notice is shipped beside the font, with the acknowledgement and both licences', () => {
    const notice = new URL('../../assets/stroke-font/NOTICE.txt', import.meta.url);
    expect(existsSync(notice)).toBe(true);
    const text = readFileSync(notice, 'utf8').replace(/\s+/g, ' ');
    expect(text).toContain(
      'originally created by Dr. A. V. Hershey while working at the U. S. National Bureau of Standards',
    );
    expect(text).toContain('James Hurt Cognition, Inc. 900 Technology Park Drive Billerica, MA 01821');
    expect(text).toContain('The MIT License (MIT) Copyright (c) 2014 James T');
  });

  test('TXT-2: the letters are single strokes: none is drawn twice', () => {
    for (const [character, { strokes }] of Object.entries(FONT.glyphs)) {
      const seen = new Set<string>();
      for (const stroke of strokes) {
        for (const [index, to] of stroke.slice(1).entries()) {
          const key = [stroke[index], to].map(String).sort().join(' ');
          expect(seen.has(key), `${character}: ${key}`).toBe(false);
          seen.add(key);
        }
      }
    }
  });
});

describe('strokeText', () => {
  test.each([0.8, 2.5, 5, 12.7])('TXT-2: an H of %d mm is that high within 0.5 %%', (capHeight) => {
    const { bottom, top } = boxOf(drawn('H', { capHeight }));
    expect(Math.abs(top - bottom - capHeight) / capHeight).toBeLessThan(0.005);
  });

  test(`TXT-2: of random texts, seed ${SEED}, with fractions among them, no segment is under 0.04 cap height`, () => {
    const words = fc.array(
      fc.oneof(fc.constantFrom(...ASCII, ...SIGNS), fc.constantFrom('1 7/16"', '33/64', ' 5/8')),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(
        words,
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.integer({ min: 0, max: 359 }),
        (parts, capHeight, angle) => {
          const contours = drawn(parts.join(''), { capHeight, angle });
          for (const side of sidesOf(contours))
            expect(side).toBeGreaterThanOrEqual(0.04 * capHeight * (1 - 1e-9));
        },
      ),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
  });

  test('is as wide as its advances, whichever way it is aligned', () => {
    const { width } = strokeText(FONT, 'LEFT 12', AT).value;
    expect(width).toBeCloseTo(textWidth(FONT, 'LEFT 12', 5), 12);
    expect(width).toBeCloseTo(textWidth(FONT, 'LEFT', 5) + textWidth(FONT, ' 12', 5), 12);
    const [left, center, right] = (['left', 'center', 'right'] as const).map((align) =>
      boxOf(drawn('LEFT 12', { align, at: { x: 100, y: 7 } })),
    );
    expect((left?.left ?? NaN) - (center?.left ?? NaN)).toBeCloseTo(width / 2, 9);
    expect((left?.left ?? NaN) - (right?.left ?? NaN)).toBeCloseTo(width, 9);
    expect(left?.left).toBeGreaterThanOrEqual(100);
    expect(right?.right).toBeLessThanOrEqual(100);
    expect(left?.bottom).toBeCloseTo(7, 9);
  });

  test('stands on its baseline, or has the middle of its capitals at the point', () => {
    const at = { x: 3, y: 20 };
    const middle = boxOf(drawn('HEX', { at, vertical: 'middle' }));
    expect([middle.bottom, middle.top]).toEqual([17.5, 22.5]);
    const base = boxOf(drawn('HEX', { at }));
    expect([base.bottom, base.top]).toEqual([20, 25]);
  });

  test('turns counter-clockwise about the point, right angles exactly', () => {
    const at = { x: 10, y: 20 };
    const flat = drawn('L7', { at });
    const upright = drawn('L7', { at, angle: 90 });
    for (const [index, { vertices }] of flat.entries()) {
      for (const [corner, { x, y }] of vertices.entries()) {
        const turned = upright[index]?.vertices[corner];
        expect(turned).toEqual({ x: 10 - (y - 20), y: 20 + (x - 10), bulge: 0 });
      }
    }
  });

  test('TXT-1: a missing glyph is a visible warning: it is named once, and a box as high as a capital is drawn', () => {
    const { value, findings } = strokeText(FONT, 'A☃B☃', AT);
    expect(findings.map(({ code, severity, values }) => [code, severity, values['character']])).toEqual([
      ['text/missing-glyph', 'warning', '☃'],
    ]);
    expect(findings[0]?.message).toContain('U+2603');
    const box = boxOf(strokeText(FONT, '☃', AT).value.contours);
    expect([box.bottom, box.top]).toEqual([0, 5]);
    expect(value.width).toBeGreaterThan(textWidth(FONT, 'AB', 5));
  });

  test('TXT-1: an accent typed apart from its letter becomes the letter that the font has', () => {
    expect(drawn('e\u0301')).toEqual(drawn('é'));
  });

  test('TXT-2: warns when the cap height is under 10 kerfs, and not at 10', () => {
    const { findings } = strokeText(FONT, 'A', { ...AT, capHeight: 1.9, kerf: 0.2 });
    expect(findings).toMatchObject([{ code: 'text/too-small', severity: 'warning', values: { least: 2 } }]);
    expect(strokeText(FONT, 'A', { ...AT, capHeight: 2, kerf: 0.2 }).findings).toEqual([]);
    expect(strokeText(FONT, 'A', { ...AT, capHeight: 3, kerf: 0.3 }).findings).toEqual([]);
  });

  test.each([0, -1, Number.NaN, Infinity])(
    'refuses the cap height %d with an error and draws nothing',
    (capHeight) => {
      const { value, findings } = strokeText(FONT, 'A', { ...AT, capHeight });
      expect([value.contours, findings.map(({ code, severity }) => [code, severity])]).toEqual([
        [],
        [['text/size', 'error']],
      ]);
    },
  );

  test('EXP: the same text gives the same strokes', () => {
    expect(drawn('Order 12 1 7/16"')).toEqual(drawn('Order 12 1 7/16"'));
  });
});

describe('fractionLayout', () => {
  test.each([
    ['1 7/16"', '1\u2009⁷⁄₁₆"'],
    ['33/64', '³³⁄₆₄'],
    ['127/128 and 1/2', '¹²⁷⁄₁₂₈ and ¹⁄₂'],
    ['-3/8', '-³⁄₈'],
    ['(1 1/4 x 2 3/4)', '(1\u2009¹⁄₄ x 2\u2009³⁄₄)'],
    ['ends 7/8.', 'ends ⁷⁄₈.'],
  ])('sets the inch fraction of %s', (typed, set) => {
    expect(fractionLayout(FONT, typed)).toBe(set);
  });

  test.each([
    '5/3',
    '1/256',
    '1/1',
    '1/2/2025',
    'B1/2',
    '3.1/2',
    '1/2x',
    '1/2.5',
    '12/2024',
    'and/or',
    '7/16/8',
  ])('leaves %s as it is typed', (typed) => {
    expect(fractionLayout(FONT, typed)).toBe(typed);
  });

  test('TXT-1: 1 7/16 takes another form than 17/16, and its small digits lie within the height of a capital', () => {
    expect(fractionLayout(FONT, '17/16')).toBe('¹⁷⁄₁₆');
    const mixed = drawn('1 7/16');
    const [whole] = mixed;
    expect(boxOf(whole === undefined ? [] : [whole])).toMatchObject({ bottom: 0, top: 5 });
    for (const digit of DIGITS) {
      const raised = boxOf(drawn(fractionLayout(FONT, `${digit}/2`).charAt(0)));
      expect(raised.top).toBeCloseTo(5, 9);
      expect(raised.top - raised.bottom).toBeCloseTo(3.5, 9);
    }
  });

  test('leaves text in a font without small digits as it is', () => {
    const { A } = FONT.glyphs;
    const small: StrokeFont = { ...FONT, glyphs: A === undefined ? {} : { A } };
    expect(fractionLayout(small, '1 7/16"')).toBe('1 7/16"');
  });
});
