import type { Corner, Fastening, ScrewPlace } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { Jig } from '../types.ts';
import type { guideNeeds } from './guide-needs.ts';
import type { templateNeeds } from './template-needs.ts';
import type { AidKind, GuideSetup, TemplateSetup } from './types.ts';

/** One use of an aid: on this drawer, at this corner of its box, for these screws. */
export interface AidUse {
  readonly fit: DrawerFit;
  readonly jig: Jig;
  /** Of the box, for a drill guide; null for a pull template. */
  readonly corner: Corner | null;
  /** The screws that the guide's bores are for. */
  readonly places: readonly ScrewPlace[];
  /** Screws of that corner that the guide does not reach: they are marked from the drawer's template. */
  readonly beyond: readonly ScrewPlace[];
  /** What must be said of this use, in sentences. */
  readonly words: readonly string[];
}

/** What all drawers that are fastened alike use, each at the same corner. */
export type Aid = Omit<AidUse, 'fit'>;

/** The aids of one kind. */
export interface PlannedAids {
  readonly jigs: readonly Jig[];
  readonly aidsOf: (fastening: Fastening) => readonly Aid[];
  readonly findings: readonly Finding[];
}

export interface AidPlan {
  readonly jigs: readonly Jig[];
  readonly uses: readonly AidUse[];
}

/** The kinds of aid that a plan is made of, and what tells what drawers ask of them. */
export interface PlanAidKinds {
  readonly cornerDrillGuide: AidKind<GuideSetup>;
  readonly pullTemplate: AidKind<TemplateSetup>;
  readonly guideNeeds: typeof guideNeeds;
  readonly templateNeeds: typeof templateNeeds;
}
