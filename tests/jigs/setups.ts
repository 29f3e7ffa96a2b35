import { readFileSync } from 'node:fs';
import type { BuildContext, Setup } from '../../core/jigs/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';

const folder = new URL('../../assets/machines/', import.meta.url);

export const MACHINE_NAMES = ['laser-6', 'laser-3', 'router', 'none'] as const;

/** A machine profile of `assets/machines/`; throws when it has errors. */
export function readMachine(name: (typeof MACHINE_NAMES)[number]): MachineProfile {
  const file = `${name}.json`;
  const { value, findings } = parseMachine(JSON.parse(readFileSync(new URL(file, folder), 'utf8')), file);
  if (value === null) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}

export const contextOf = (name: (typeof MACHINE_NAMES)[number]): BuildContext => ({
  machine: readMachine(name),
  unit: 'in',
  order: ['test order', '2031-05-20'],
});

/** A bottom edge of a front of 19.05 mm, but for what is given. */
export const setup = (given: Partial<Setup> = {}): Setup => ({
  edge: 'bottom',
  overhang: 50.8,
  frontThickness: 19.05,
  backBevel: 0,
  edgeLength: 400,
  boxLength: 330,
  clearLength: Infinity,
  boxReach: 15.875,
  ...given,
});
