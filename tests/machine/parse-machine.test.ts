import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { MACHINE_NAMES } from '../jigs/setups.ts';

const shape = z.looseObject({
  layers: z.record(z.string(), z.looseObject({})),
  sheets: z.looseObject({}),
});

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

  const sheets = (changes: Record<string, unknown>, name = 'router') =>
    faults({ sheets: { ...document(name).sheets, ...changes } }, name);

  test('refuses a spacing that the cut does not pass, and a margin under half of it', () => {
    expect(sheets({ spacing: '6 mm' })).toEqual([
      'Field sheets.spacing: it is 6 mm; a cut of 6.35 mm runs between two parts, which needs 6.35 mm or more.',
    ]);
    expect(sheets({ spacing: '1/4 in' })).toEqual([]);
    expect(sheets({ edgeMargin: '3 mm' })[0]).toMatch(/sheets.edgeMargin: it is 3 mm; .* needs 3.175 mm/);
  });

  test('refuses stock that margins use up, two of one name, and none at all', () => {
    const sheet = { name: 'strip', width: '2440 mm', height: '30 mm', count: 2, offcut: true };
    expect(sheets({ stock: [sheet] })).toEqual([
      'Field sheets.stock.strip: "strip" is 2440 mm x 30 mm; the two margins take 30 mm, so both sides must be longer.',
    ]);
    const wide = { ...sheet, height: '31 mm' };
    expect(sheets({ stock: [wide] })).toEqual([]);
    expect(sheets({ stock: [wide, wide] })).toEqual([
      'Field sheets.stock.strip.name: "strip" names another sheet already; give each a name of its own.',
    ]);
    expect(sheets({ stock: [] })[0]).toMatch(/sheets.stock: .*give one size of sheet at least/);
    expect(sheets({ stock: [{ ...wide, count: -1 }] })).toHaveLength(1);
  });

  test('refuses tabs that run into each other, and bridges where the machine offsets its tool', () => {
    const tabs = { use: 'marks', width: '6 mm', spacing: '24 mm' };
    expect(faults({ tabs })).toEqual([
      'Field tabs.spacing: it is 24 mm; tabs 6 mm wide with a cut of 6.35 mm need 24.7 mm or more from one to the next.',
    ]);
    expect(faults({ tabs: { ...tabs, use: 'none' } })).toEqual([]);
    const bridges = { ...tabs, use: 'bridges', spacing: '200 mm' };
    expect(faults({ tabs: bridges })[0]).toMatch(/^Field tabs.use: it is "bridges".*compensation "file"/);
    expect(faults({ tabs: bridges, compensation: 'file' })).toEqual([]);
  });

  test('refuses what is no profile, and one of a newer program', () => {
    expect(faults({ format: 'drawing' })[0]).toMatch(/^This is not a machine profile/);
    expect(faults({ version: 3 })[0]).toMatch(/version 3, written by a newer program/);
  });
});
