import type { Fastening } from '../../../fastening/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';

/** What a template is drawn from: how a drawer fits and, where it is known, how its front is screwed on. */
export interface TemplateSource {
  readonly fit: DrawerFit;
  readonly fastening: Fastening | null;
}

/** One template and every drawer that it serves: they are alike in all that it shows. */
export interface Template extends TemplateSource {
  /** `F3` */
  readonly id: string;
  readonly users: readonly DrawerFit[];
}
