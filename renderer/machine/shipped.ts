import laser3 from '../../assets/machines/laser-3.json';
import laser6 from '../../assets/machines/laser-6.json';
import none from '../../assets/machines/none.json';
import router from '../../assets/machines/router.json';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';

/** The machine profiles that come with the program. */
export const shippedMachines = (): readonly MachineProfile[] =>
  [laser6, laser3, router, none].flatMap((json) => parseMachine(json, json.name).value ?? []);
