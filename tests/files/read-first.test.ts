import { expect, test } from 'vitest';
import { readFirst } from '../../core/files/read-first.ts';
import { readMachine } from '../jigs/setups.ts';
import { demo } from '../pipeline/demo.ts';

const machine = readMachine('laser-6');
const { design } = demo('harbor-library', machine, 'edge');
const words = readFirst(design.order, design.plan, machine);

test('readFirst says to open the box front to the clearance, after the pilots and in the box front only', () => {
  const pilot = words.indexOf('Pilot holes: from inside the box');
  const clear = words.indexOf('open the holes in the box front only');
  expect(pilot).toBeGreaterThan(0);
  expect(clear).toBeGreaterThan(pilot);
});

test('readFirst says how to lean a bit without a guide, and that the pull goes on through the box front', () => {
  expect(words).toContain('set a sliding bevel to its angle');
  expect(words).toContain('is carried on through the box front from the face');
});
