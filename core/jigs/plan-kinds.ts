import { bottomFence } from './kinds/bottom-fence.ts';
import { cornerFence } from './kinds/corner-fence.ts';
import { sideSpacer } from './kinds/side-spacer.ts';
import { stepProfile } from './kinds/step-profile.ts';
import type { PlanKinds } from './plan-types.ts';

/** The kinds of jig as they are; a caller may give others that keep what they have built. */
export const PLAN_KINDS: PlanKinds = { bottomFence, sideSpacer, stepProfile, cornerFence };
