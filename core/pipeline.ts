import type { Outcome } from './findings/finding.ts';
import { hasErrors } from './findings/make.ts';
import { exportPart, type ExportedPart } from './files/export-part.ts';
import { fitOrder } from './fit/fit-order.ts';
import type { DrawerFit } from './fit/types.ts';
import type { JigPlan, Registration } from './jigs/plan-types.ts';
import { planJigs } from './jigs/plan.ts';
import { engravedWords } from './order/engraved-words.ts';
import type { Order } from './order/types.ts';
import type { MachineProfile } from './machine/profile.ts';
import { partsOf } from './parts/parts-of.ts';
import type { StrokeFont } from './parts/stroke-font.ts';
import type { Part } from './parts/types.ts';
import type { ShopStandard } from './rules/types.ts';

/** Everything that turns an order into cut files, besides the order. */
export interface Workshop {
  readonly standard: ShopStandard;
  readonly machine: MachineProfile;
  readonly registration: Registration;
  readonly font: StrokeFont;
}

/** An order as far as parts; the files follow one at a time. */
export interface Design {
  readonly order: Order;
  readonly fits: readonly DrawerFit[];
  readonly plan: JigPlan;
  readonly parts: readonly Part[];
}

/**
 * The chain: order -> rules -> fit -> jigs -> parts. With an error among the findings nothing may be
 * written; the value then holds as much as could be made.
 */
export function designOrder(order: Order, workshop: Workshop): Outcome<Design> {
  const { standard, machine, registration, font } = workshop;
  const fits = fitOrder(order, standard);
  if (hasErrors(fits.findings)) {
    return {
      value: { order, fits: fits.value, plan: { jigs: [], uses: [] }, parts: [] },
      findings: fits.findings,
    };
  }
  const context = { machine, unit: order.unit, order: engravedWords(order) };
  const plan = planJigs(fits.value, registration, context);
  const parts = partsOf(plan.value.jigs, machine, font);
  return {
    value: { order, fits: fits.value, plan: plan.value, parts: parts.value },
    findings: [...fits.findings, ...plan.findings, ...parts.findings],
  };
}

/** Parts -> files, one part at a time, so that progress can be shown and stopped between them. */
export function* exportParts(
  parts: readonly Part[],
  machine: MachineProfile,
): Generator<Outcome<ExportedPart | null>> {
  for (const part of parts) {
    yield exportPart(part, machine);
  }
}
