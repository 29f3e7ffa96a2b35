import { cornerDrillGuide } from './corner-drill-guide.ts';
import { pullTemplate } from './pull-template.ts';
import type { AidKind } from './types.ts';

/** All kinds of aids to drilling. A new kind is one file and one line here; each has its own sort of set-up. */
export const AID_KINDS: readonly AidKind<never>[] = [cornerDrillGuide, pullTemplate];
