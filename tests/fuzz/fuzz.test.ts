import { describe, expect, test } from 'vitest';
import { corpus } from './corpus.ts';
import { PARSERS } from './parsers.ts';

/** Inputs for a parser of weight 1; `npm run fuzz` tries many more. */
const RUNS = Number(process.env['FUZZ_RUNS'] ?? '100');
const SEED = Number(process.env['FUZZ_SEED'] ?? '20310607');

const texts = corpus();

describe('every parser ends, throws nothing but what it says, and tells what is wrong in sentences', () => {
  test.each(PARSERS)('$name: random inputs', async ({ fuzz, weight }) => {
    expect(await fuzz(SEED, RUNS)).toBeGreaterThanOrEqual(Math.round(RUNS * weight));
  });

  test.each(PARSERS)(`$name: the ${texts.length} texts of the corpus`, async ({ tryText }) => {
    for (const { why, text } of texts)
      expect({ why, found: await tryText(text) }).toEqual({ why, found: [] });
  });
});
