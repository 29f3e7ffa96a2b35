import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { parseDraft } from '../../core/project/parse-draft.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { PROJECT_VERSION } from '../../core/project/project-schema.ts';
import { writeDraft } from '../../core/project/write-draft.ts';
import { writeProject } from '../../core/project/write-project.ts';
import { readMachine } from '../jigs/setups.ts';
import { readStandard } from '../rules/read-standard.ts';

const read = (file: string): unknown =>
  JSON.parse(readFileSync(new URL(`./samples/${file}`, import.meta.url), 'utf8'));

/** A project that version 0.1 of the program wrote, and the sizes that it gave its drawers. */
const PROJECT = read('project-1.json');
const FITS = z
  .array(
    z.object({
      drawer: z.string(),
      overhang: z.record(z.enum(['left', 'right', 'top', 'bottom']), z.number()),
      frontW: z.number(),
      frontH: z.number(),
      boxW: z.number(),
      boxH: z.number(),
    }),
  )
  .parse(read('fits-1.json'));

describe('parseProject(a version 1 project)', () => {
  const { value, findings } = parseProject(PROJECT, 'old.json');

  test('reads it without findings, its standard and machine included', () => {
    expect(findings).toEqual([]);
    expect(value?.standard).toEqual(readStandard('face-frame-undermount.json'));
    expect(value?.machine).toEqual(readMachine('laser-6'));
    expect(value?.order.drawers[0]?.pullChoice).toEqual({ sort: 'bar', centers: 96 });
  });

  test('gives every drawer the sizes that the program of version 1 gave it', () => {
    if (value === null) throw new Error('unreachable');
    const fits = fitOrder(value.order, value.standard).value;
    expect(fits).toHaveLength(FITS.length);
    expect(FITS.length).toBeGreaterThan(30);
    for (const [index, before] of FITS.entries()) {
      const fit = fits[index];
      if (fit === undefined) throw new Error('unreachable');
      const { drawer, overhang, ...sizes } = before;
      expect(`${fit.drawer.cabinet} ${fit.drawer.drawer}`).toBe(drawer);
      for (const edge of ['left', 'right', 'top', 'bottom'] as const) {
        expect(fit.overhang[edge], `${drawer}, ${edge}`).toBeCloseTo(overhang[edge], 5);
      }
      for (const size of ['frontW', 'frontH', 'boxW', 'boxH'] as const) {
        expect(fit[size], `${drawer}, ${size}`).toBeCloseTo(sizes[size], 5);
      }
    }
  });

  test('is written as version 2, and read back the same', () => {
    if (value === null) throw new Error('unreachable');
    const json: unknown = JSON.parse(writeProject(value));
    expect(json).toMatchObject({ version: 2, standard: { version: 2 } });
    expect(parseProject(json, 'new.json')).toEqual({ value, findings: [] });
  });
});

describe('parseDraft(a version 1 project)', () => {
  test('keeps its cells as they are', () => {
    const defaults = { machine: readMachine('router'), registration: 'corner' } as const;
    const { value, findings } = parseDraft(PROJECT, 'old.json', defaults);
    expect(findings).toEqual([]);
    expect(value?.rows).toHaveLength(FITS.length);
    expect(value?.rows[0]?.cells.pull).toBe('bar 96 mm');
  });
});

describe('parseDraft(a version 2 project), as it was written when version 2 began', () => {
  const defaults = { machine: readMachine('laser-6'), registration: 'edge' } as const;

  test('is read without findings, and written again as the very same bytes', () => {
    const text = readFileSync(new URL('./samples/project-2.json', import.meta.url), 'utf8');
    const { value, findings } = parseDraft(JSON.parse(text), 'old.json', defaults);
    expect(findings).toEqual([]);
    expect(value).toMatchObject({ name: 'Boathouse', registration: 'corner', sharing: 'fewest' });
    expect(value === null ? '' : writeDraft(value)).toBe(text);
  });

  test('there is a sample of every version up to the present one', () => {
    for (let version = 1; version <= PROJECT_VERSION; version += 1) {
      expect(read(`project-${version}.json`)).toMatchObject({ format: 'overhang-project', version });
    }
  });
});
