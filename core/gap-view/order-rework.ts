import { groupBy } from '../collections/group-by.ts';
import { budgetOrder } from '../fit/budget/budget-order.ts';
import type { SampledShare } from '../fit/budget/share-interval.ts';
import type { AdjustmentBudget, BudgetOptions, OrderBudget } from '../fit/budget/types.ts';
import { hangingOf, hungFit, type HangingUse } from '../jigs/sharing/hung-by.ts';
import type { ShopStandard } from '../rules/types.ts';

/** What sampling an order's fronts told. */
export interface OrderRework {
  readonly rework: NonNullable<OrderBudget['rework']>;
  /** How many of each row's fronts come in. */
  readonly reach: Readonly<Record<string, SampledShare>>;
}

/** Enough for a tenth of a percent or so; the same every time, so that edits compare. */
export const REWORK_SAMPLES: BudgetOptions = { samples: 2000, seed: 1 };

/** Samples the fronts of an order by row, as its jigs hang them; null where it has none. */
export function orderRework(
  budgets: Readonly<Record<string, AdjustmentBudget>>,
  standard: ShopStandard,
  uses: readonly (HangingUse & { readonly rowId: string })[] = [],
): OrderRework | null {
  const usesOf = groupBy(uses, ({ rowId }) => rowId);
  const rows = Object.entries(budgets).map(([rowId, budget]) => {
    const hanging = hangingOf(usesOf.get(rowId) ?? []);
    return { rowId, fit: hungFit(budget.fit, hanging), registered: hanging.registered };
  });
  const sides = new Map(rows.map(({ fit, registered }) => [fit, registered]));
  const { value } = budgetOrder(
    rows.map(({ fit }) => fit),
    standard,
    REWORK_SAMPLES,
    (fit) => sides.get(fit) ?? 'left',
  );
  if (value.rework === null || value.drawers.length === 0) return null;
  const byFit = new Map(value.drawers.map(({ fit, reach }) => [fit, reach]));
  return {
    rework: value.rework,
    reach: Object.fromEntries(
      rows.flatMap(({ rowId, fit }) => {
        const reach = byFit.get(fit) ?? null;
        return reach === null ? [] : [[rowId, reach]];
      }),
    ),
  };
}
