import { describe, expect, test } from 'vitest';
import { hungBudget } from '../../core/gap-view/hung-budget.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import type { Designed } from '../../core/session/types.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft } from './drafts.ts';

/** Sides that budgets are for, with the rows whose jigs set the front by another. */
function sidesOf({ budgets, uses }: Designed, standard: ReturnType<typeof demoDraft>['standard']) {
  const rows = Object.entries(budgets);
  return {
    sides: new Set(rows.map(([, { registered }]) => registered)),
    others: rows.filter(
      ([id, budget]) =>
        hungBudget(
          budget,
          standard,
          uses.filter(({ rowId }) => rowId === id),
        ) !== budget,
    ),
  };
}

describe('budgets are of the side that its jigs set each front by', () => {
  const session = createDesignSession(STROKE_FONT);
  const draft = demoDraft();

  test('in an order in which some are set by the left side and some by the right', () => {
    const { sides, others } = sidesOf(session.design(draft, 1), draft.standard);
    expect(sides).toEqual(new Set(['left', 'right']));
    expect(others).toEqual([]);
  });

  // Corner fences set a front by both hands, and the left one counts.
  test('and when another kind of jig sets them', () => {
    const corners = { ...draft, registration: 'corner' as const };
    const { sides, others } = sidesOf(session.design(corners, 2), draft.standard);
    expect(sides).toEqual(new Set(['left']));
    expect(others).toEqual([]);
    expect(sidesOf(session.design(draft, 3), draft.standard).sides).toEqual(new Set(['left', 'right']));
  });
});
