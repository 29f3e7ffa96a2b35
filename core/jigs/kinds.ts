import { bottomFence } from './kinds/bottom-fence.ts';
import { cornerFence } from './kinds/corner-fence.ts';
import { sideSpacer } from './kinds/side-spacer.ts';
import { stepProfile } from './kinds/step-profile.ts';
import type { JigKind } from './types.ts';

/** All kinds of jigs. A new kind is one file and one line here. */
export const JIG_KINDS: readonly JigKind[] = [bottomFence, sideSpacer, stepProfile, cornerFence];
