import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { anyStandard } from './arbitraries.ts';
import { readStandard } from './read-standard.ts';

const SEED = 20_310_526;

describe('writeStandard', () => {
  test('parseStandard(writeStandard(standard)) is the standard, to the last bit', () => {
    fc.assert(
      fc.property(anyStandard, (standard) => {
        const text = writeStandard(standard);
        const { value, findings } = parseStandard(JSON.parse(text), 'written.json');
        expect(findings).toEqual([]);
        expect(value).toEqual(standard);
        expect(text.endsWith('}\n')).toBe(true);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test('writes the same bytes however the fields of the standard are ordered', () => {
    const standard = readStandard('face-frame-undermount.json');
    const turned = {
      ...reversed(standard),
      members: reversed(standard.members),
      tolerances: reversed(standard.tolerances),
    };
    expect(Object.keys(turned)[0]).not.toBe(Object.keys(standard)[0]);
    expect(writeStandard(turned)).toBe(writeStandard(standard));
  });
});

/** The same record with its fields the other way round. */
function reversed<T extends object>(record: T): T;
function reversed(record: object): object {
  return Object.fromEntries(Object.entries(record).reverse());
}
