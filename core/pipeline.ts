import type { Outcome } from './findings/finding.ts';
import { hasErrors } from './findings/make.ts';
import { exportPart, type ExportedPart } from './files/export-part.ts';
import { fastenOrder } from './fastening/fasten-order.ts';
import type { Fastening } from './fastening/types.ts';
import { budgetOrder } from './fit/budget/budget-order.ts';
import { seasonOrder } from './fit/seasons/season-order.ts';
import { fitOrder } from './fit/fit-order.ts';
import type { DrawerFit } from './fit/types.ts';
import { planOrder, type OrderPlan } from './jigs/plan-order.ts';
import type { Registration } from './jigs/plan-types.ts';
import { registeredSides } from './jigs/sharing/hung-by.ts';
import type { Sharing } from './jigs/sharing/types.ts';
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
  /** Which drawers share jigs; made for the fits of the very order. Absent: each distinct overhang has its own. */
  readonly sharing?: Sharing;
}

/** An order as far as parts; the files follow one at a time. */
export interface Design {
  readonly order: Order;
  readonly fits: readonly DrawerFit[];
  readonly fastenings: readonly Fastening[];
  readonly plan: OrderPlan;
  readonly parts: readonly Part[];
}

/**
 * The chain: order -> rules -> fit -> fastening -> jigs -> parts. With an error among the findings nothing may be
 * written; the value then holds as much as could be made.
 */
export function designOrder(order: Order, workshop: Workshop): Outcome<Design> {
  const { standard, machine, registration, font, sharing } = workshop;
  const fits = fitOrder(order, standard);
  if (hasErrors(fits.findings)) {
    return {
      value: {
        order,
        fits: fits.value,
        fastenings: [],
        plan: { jigs: [], uses: [], aids: [] },
        parts: [],
      },
      findings: fits.findings,
    };
  }
  const context = { machine, unit: order.unit, order: engravedWords(order) };
  const seasons = seasonOrder(fits.value, standard);
  const fastenings = fastenOrder(fits.value, standard);
  const plan = planOrder(
    { fits: fits.value, fastenings: fastenings.value, registration, standard, sharing },
    context,
  );
  // Which side a front is set by is known once the jigs are.
  const registeredOf = registeredSides(plan.value.uses);
  const budgets = budgetOrder(fits.value, standard, { samples: 0, seed: 0 }, registeredOf);
  const parts = partsOf(plan.value.jigs, machine, font);
  return {
    value: {
      order,
      fits: fits.value,
      fastenings: fastenings.value,
      plan: plan.value,
      parts: parts.value,
    },
    findings: [
      ...fits.findings,
      ...budgets.findings,
      ...seasons.findings,
      ...fastenings.findings,
      ...plan.findings,
      ...parts.findings,
    ],
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
