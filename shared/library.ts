import laser3 from '../assets/machines/laser-3.json';
import none from '../assets/machines/none.json';
import router from '../assets/machines/router.json';
import frameSideMount from '../assets/standards/face-frame-side-mount.json';
import frameless from '../assets/standards/frameless-undermount.json';
import { FIRST_MACHINE, FIRST_STANDARD } from './beginning.ts';

/** The shop standards that come with the program, by the name that a command takes; the first is the default. */
export const STANDARDS: Readonly<Record<string, unknown>> = {
  [FIRST_STANDARD.name]: FIRST_STANDARD.json,
  'face-frame-side-mount': frameSideMount,
  'frameless-undermount': frameless,
};

/** The machine profiles that come with the program; the first is the default. */
export const MACHINES: Readonly<Record<string, unknown>> = {
  [FIRST_MACHINE.name]: FIRST_MACHINE.json,
  'laser-3': laser3,
  router,
  none,
};
