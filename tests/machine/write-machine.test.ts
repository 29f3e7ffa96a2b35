import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { OPERATIONS } from '../../core/machine/operations.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { LayerStyle, MachineProfile } from '../../core/machine/profile.ts';
import { writeMachine } from '../../core/machine/write-machine.ts';
import { MACHINE_NAMES, readMachine } from '../jigs/setups.ts';

const SEED = 20_310_604;

const length = fc.double({ min: 0.01, max: 50, noNaN: true });
const lengthOrZero = fc.oneof(fc.constant(0), length);
const words = fc.string({ unit: 'grapheme', minLength: 1 }).filter((text) => text.trim() !== '');

const layers: fc.Arbitrary<MachineProfile['layers']> = fc
  .tuple(
    fc.uniqueArray(fc.stringMatching(/^[A-Z0-9_-]{1,31}$/), { minLength: 6, maxLength: 6 }),
    fc.array(fc.integer({ min: 1, max: 255 }), { minLength: 6, maxLength: 6 }),
    fc.stringMatching(/^#[0-9a-f]{6}$/),
  )
  .map(([names, indexes, color]) => {
    const layer = (index: number): LayerStyle => ({
      name: names[index] ?? '',
      colorIndex: indexes[index] ?? 1,
      color,
    });
    return {
      engrave: layer(0),
      drill: layer(1),
      pocket: layer(2),
      'cut-inner': layer(3),
      tab: layer(4),
      'cut-outer': layer(5),
    };
  });

/** mm. Stock that is longer than its margins, a spacing and a margin that every cut below passes. */
const stock = fc.record({
  name: words,
  width: fc.double({ min: 250, max: 5000, noNaN: true }),
  height: fc.double({ min: 250, max: 5000, noNaN: true }),
  count: fc.oneof(fc.constant(null), fc.nat(99)),
  offcut: fc.boolean(),
});

const sheets: fc.Arbitrary<MachineProfile['sheets']> = fc.record({
  stock: fc.uniqueArray(stock, { minLength: 1, maxLength: 4, selector: ({ name }) => name }),
  edgeMargin: fc.double({ min: 25, max: 100, noNaN: true }),
  spacing: fc.double({ min: 50, max: 100, noNaN: true }),
  turn: fc.constantFrom('quarter' as const, 'half' as const, 'none' as const),
  effort: fc.nat(10_000),
});

/** Every laser profile that can be written down. */
const anyLaser: fc.Arbitrary<MachineProfile> = fc.record({
  name: words,
  note: fc.string({ unit: 'grapheme' }),
  kind: fc.constant('laser' as const),
  sheet: fc.record({ material: words, thickness: length }),
  sheets,
  tabs: fc.record({
    use: fc.constantFrom('none' as const, 'marks' as const),
    width: length,
    spacing: fc.double({ min: 200, max: 900, noNaN: true }),
  }),
  kerf: lengthOrZero,
  compensation: fc.constantFrom('file' as const, 'machine' as const),
  joint: fc.constantFrom('pin' as const, 'key' as const),
  pinDiameter: length,
  fit: fc.record({ pin: lengthOrZero, slot: lengthOrZero }),
  reliefRadius: length,
  capHeight: length,
  layers,
  dxf: fc.record({
    version: fc.constantFrom('R12' as const, 'R2000' as const),
    unit: fc.constantFrom('mm' as const, 'in' as const),
    repeatFirstPoint: fc.boolean(),
    arcsAsLines: fc.boolean(),
  }),
});

describe('writeMachine', () => {
  test('parseMachine(writeMachine(machine)) is the machine, to the last bit', () => {
    fc.assert(
      fc.property(anyLaser, (machine) => {
        const text = writeMachine(machine);
        expect(parseMachine(JSON.parse(text), 'a.json')).toEqual({ value: machine, findings: [] });
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test.each(MACHINE_NAMES)('%s of the library reads back the same, and has every field', (name) => {
    const text = writeMachine(readMachine(name));
    expect(parseMachine(JSON.parse(text), 'a.json').value).toEqual(readMachine(name));
    const shipped: object = JSON.parse(
      readFileSync(new URL(`../../assets/machines/${name}.json`, import.meta.url), 'utf8'),
    );
    expect(Object.keys(JSON.parse(text))).toEqual(Object.keys(shipped));
    expect(Object.keys(JSON.parse(text).layers)).toEqual(OPERATIONS);
  });

  test('writes the same bytes however the profile was put together', () => {
    const machine = readMachine('laser-6');
    const turned = Object.fromEntries(Object.entries(machine).toReversed());
    expect(writeMachine({ ...machine, ...turned })).toBe(writeMachine(machine));
  });
});
