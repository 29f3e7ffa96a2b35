import type { Comparer } from '../worker/comparer.ts';
import { designLine } from './design-line.ts';

/** Edits are tried on the draft that the worker has: the one in work. */
export const COMPARER: Comparer = {
  standard: (_draft, standard) => designLine().tryStandard(standard),
  machine: (_draft, machine) => designLine().tryMachine(machine),
};
