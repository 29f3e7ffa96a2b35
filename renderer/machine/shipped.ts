import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { MACHINES } from '../../shared/library.ts';

/** The machine profiles that come with the program. */
export const shippedMachines = (): readonly MachineProfile[] =>
  Object.entries(MACHINES).flatMap(([name, json]) => parseMachine(json, name).value ?? []);
