import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { MACHINE_NAMES } from '../jigs/setups.ts';

const shape = z.looseObject({ layers: z.record(z.string(), z.looseObject({})) });

const document = (name: string) =>
  shape.parse(
    JSON.parse(readFileSync(new URL(`../../assets/machines/${name}.json`, import.meta.url), 'utf8')),
  );

const faults = (changes: Record<string, unknown>, name = 'router') =>
  parseMachine({ ...document(name), ...changes }, 'mine.json').findings.map(({ message }) => message);

describe('parseMachine', () => {
  test.for(MACHINE_NAMES)('reads %s, which comes with the program', (name) => {
    const { value, findings } = parseMachine(document(name), `${name}.json`);
    expect(findings).toEqual([]);
    expect(value?.sheet.thickness).toBeGreaterThan(0);
  });

  test('reads lengths in inches and millimetres alike', () => {
    expect(parseMachine(document('router'), 'router.json').value?.kerf).toBeCloseTo(6.35, 12);
  });

  test('BONE: a router needs a relief of its tool radius and 0.05 mm more', () => {
    expect(faults({ reliefRadius: '3.2 mm' })).toEqual([
      'Field reliefRadius: it is 3.2 mm; a tool of 6.35 mm needs 3.225 mm or more.',
    ]);
    expect(faults({ reliefRadius: '3.225 mm' })).toEqual([]);
  });

  test('DXF-5: refuses layer names that importers refuse, and one name for two operations', () => {
    const { layers } = document('laser-6');
    const named = (name: string) => ({ layers: { ...layers, engrave: { ...layers['engrave'], name } } });
    expect(faults(named('my layer'), 'laser-6')).toEqual([
      'Field layers.engrave.name: a layer name has capitals, digits, _ and -, 31 characters at most.',
    ]);
    expect(faults(named('X'.repeat(32)), 'laser-6')).toHaveLength(1);
    expect(faults(named('DRILL'), 'laser-6')).toEqual([
      'Field layers: two operations have the layer "DRILL"; give each its own.',
    ]);
  });

  test('names a field that is missing, unknown or of the wrong kind', () => {
    expect(faults({ kerf: undefined })).toEqual([
      'Field kerf: it is missing; write a text in quotation marks.',
    ]);
    expect(faults({ spindle: 3 })[0]).toMatch(/unknown “spindle”/);
    expect(faults({ kind: 'saw' })).toEqual(['Field kind: it is “saw”; write "laser", "router" or "none".']);
  });

  test('refuses what is no profile, and one of a newer program', () => {
    expect(faults({ format: 'drawing' })[0]).toMatch(/^This is not a machine profile/);
    expect(faults({ version: 2 })[0]).toMatch(/version 2, written by a newer program/);
  });
});
