import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packContent, unpackContent } from '../../shared/file-content.ts';

const SEED = 20_261_130;

describe('packContent', () => {
  test('leaves text as it is and gives bytes the base64 that Node gives them', () => {
    expect(packContent('½ in')).toBe('½ in');
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40_000 }), (bytes) => {
        expect(packContent(bytes)).toEqual({ base64: Buffer.from(bytes).toString('base64') });
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  test('takes a file of several MB', () => {
    const large = new Uint8Array(5_000_000).map((_, index) => index % 251);
    const back = unpackContent(packContent(large));
    expect(typeof back !== 'string' && Buffer.compare(back, large)).toBe(0);
  });
});

describe('unpackContent', () => {
  test('gives back what packContent was given', () => {
    const content = fc.oneof(fc.string({ unit: 'binary' }), fc.uint8Array({ maxLength: 20_000 }));
    fc.assert(
      fc.property(content, (given) => {
        expect(unpackContent(packContent(given))).toEqual(given);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
