import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeText } from '../../shared/decode-text.ts';

const SEED = 20_310_528;
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const bytes = (...values: readonly number[]): Uint8Array => Uint8Array.from(values);

describe('decodeText', () => {
  test('reads UTF-8 with and without a byte order mark', () => {
    expect(decodeText(utf8('½″ × 1⁄4'))).toEqual({ ok: true, text: '½″ × 1⁄4' });
    expect(decodeText(utf8('\ufeffcabinet'))).toEqual({ ok: true, text: 'cabinet' });
    expect(decodeText(bytes())).toEqual({ ok: true, text: '' });
  });

  test.each([
    [
      'UTF-16 little end first',
      bytes(0xff, 0xfe, 0x61, 0x00),
      'The file is UTF-16 text; save it as CSV UTF-8.',
    ],
    ['UTF-16 big end first', bytes(0xfe, 0xff, 0x00, 0x61), 'The file is UTF-16 text; save it as CSV UTF-8.'],
    [
      'UTF-16 without a mark',
      bytes(0x61, 0x00, 0x62, 0x00),
      'The file is no text: byte 2, in line 1, is 00, as in spreadsheet, picture or UTF-16 files; save it as CSV UTF-8.',
    ],
    [
      'Latin-1',
      bytes(0x61, 0x0a, 0x62, 0xbd, 0x63),
      'The file is not UTF-8 text: byte 4, in line 2, is BD; save it as CSV UTF-8.',
    ],
    [
      'a sequence cut off at the end',
      bytes(0x61, 0xe2, 0x80),
      'The file is not UTF-8 text: byte 2, in line 1, is E2; save it as CSV UTF-8.',
    ],
    [
      'an overlong form',
      bytes(0xc0, 0xaf),
      'The file is not UTF-8 text: byte 1, in line 1, is C0; save it as CSV UTF-8.',
    ],
    [
      'a surrogate',
      bytes(0xed, 0xa0, 0x80),
      'The file is not UTF-8 text: byte 1, in line 1, is ED; save it as CSV UTF-8.',
    ],
  ])('refuses %s', (_, input, reason) => {
    expect(decodeText(input)).toEqual({ ok: false, reason });
  });

  test('decodeText(any text without NUL as UTF-8) is the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        fc.pre(!text.includes('\0') && !text.startsWith('\ufeff'));
        expect(decodeText(utf8(text))).toEqual({ ok: true, text });
      }),
      { seed: SEED, numRuns: 5000 },
    );
  });

  test('decodeText(any bytes) accepts what a strict decoder of the platform accepts, and no more', () => {
    fc.assert(
      fc.property(fc.uint8Array({ min: 1, maxLength: 12 }), (input) => {
        const utf16 = (input[0] === 0xff && input[1] === 0xfe) || (input[0] === 0xfe && input[1] === 0xff);
        let accepted = !utf16;
        try {
          new TextDecoder('utf-8', { fatal: true }).decode(input);
        } catch {
          accepted = false;
        }
        expect(decodeText(input).ok).toBe(accepted);
      }),
      { seed: SEED, numRuns: 20_000 },
    );
  });
});
