import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { writeMachine } from '../../core/machine/write-machine.ts';
import { MACHINE_NAMES, readMachine } from '../jigs/setups.ts';

const json = z.record(z.string(), z.json());
const layersOf = z.looseObject({ layers: z.record(z.string(), z.looseObject({ name: z.string() })) });

const read = (path: string) => json.parse(JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')));

/** A document of version 1, as it was shipped with version 0.1 of the program. */
const sample = () => read('./samples/machine-1.json');

/** A shipped profile without what version 2 added. */
function asVersion1(name: string): Record<string, unknown> {
  const { sheets: _sheets, tabs: _tabs, ...document } = read(`../../assets/machines/${name}.json`);
  const { tab: _tab, ...layers } = layersOf.parse(document).layers;
  return { ...document, version: 1, layers };
}

describe('parseMachine(a version 1 document)', () => {
  test('keeps every value that it has, and is written as version 2', () => {
    const { value, findings } = parseMachine(sample(), 'mine.json');
    expect(findings).toEqual([]);
    if (value === null) throw new Error('unreachable');
    const { version, ...written } = json.parse(JSON.parse(writeMachine(value)));
    expect(version).toBe(2);
    const { version: before, ...kept } = sample();
    expect(before).toBe(1);
    expect(written).toMatchObject(kept);
  });

  test.each(MACHINE_NAMES)('gets what %s has: shipped profiles and the migration add the same', (name) => {
    expect(parseMachine(asVersion1(name), name)).toEqual({ value: readMachine(name), findings: [] });
  });

  test('gets a spacing that its own tool passes', () => {
    const wide = { ...asVersion1('router'), kerf: '5/8 in', reliefRadius: '9 mm' };
    const { value, findings } = parseMachine(wide, 'mine.json');
    expect(findings).toEqual([]);
    expect(value?.sheets.spacing).toBeCloseTo(15.875, 12);
  });

  test('gets a layer for tabs that none of its operations has', () => {
    const document = asVersion1('laser-6');
    const { layers } = layersOf.parse(document);
    const taken = { ...layers, drill: { ...layers['drill'], name: 'TABS' } };
    const { value, findings } = parseMachine({ ...document, layers: taken }, 'mine.json');
    expect(findings).toEqual([]);
    expect(value?.layers.tab.name).toBe('TAB_MARKS');
    expect(value?.layers.drill.name).toBe('TABS');
  });

  test('keeps its faults: they are told as in a document of this version', () => {
    const faults = (changes: object) =>
      parseMachine({ ...asVersion1('router'), ...changes }, 'mine.json').findings.map(
        ({ message }) => message,
      );
    expect(faults({ kerf: 'wide' })[0]).toMatch(/^Field kerf: /);
    expect(faults({ layers: 3 })[0]).toMatch(/^Field layers: /);
    expect(faults({ sheets: 3 })[0]).toMatch(/^Field sheets: /);
  });
});
