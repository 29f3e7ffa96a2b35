import type { OrderRework } from '../../core/gap-view/order-rework.ts';
import type { AdjustmentBudget } from '../../core/fit/budget/types.ts';
import type { SeasonBudget } from '../../core/fit/seasons/types.ts';
import type { HangingUse } from '../../core/jigs/sharing/hung-by.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { BudgetPanel } from './BudgetPanel.tsx';
import type { DialInNotes } from './dial-in-notes.ts';
import { DialInPanel } from './DialInPanel.tsx';
import './gaps.css';
import { ReworkPanel } from './ReworkPanel.tsx';
import { SeasonPanel } from './SeasonPanel.tsx';

/** Where the counting of rework stands; `earlier` is an answer for the order as it was before. */
export interface ReworkShown {
  readonly state: 'none' | 'counting' | 'counted' | 'earlier' | 'failed';
  readonly answer: OrderRework | null;
}

export interface GapsViewProps {
  /** The picked row; null when none is. */
  readonly rowId: string | null;
  /** Of the picked drawer; null when it has none. */
  readonly budget: AdjustmentBudget | null;
  /** The jigs that set the picked drawer. */
  readonly uses: readonly HangingUse[];
  readonly season: SeasonBudget | null;
  readonly standard: ShopStandard;
  readonly unit: LengthUnit;
  readonly rework: ReworkShown;
  /** What was read at the picked drawer. */
  readonly notes: DialInNotes;
  readonly onNotes: (notes: DialInNotes) => void;
  readonly onCount: () => void;
}

/** Whether a drawer's front comes into its gaps, how to bring it in, and whether it stays there over the year. */
export function GapsView(props: GapsViewProps) {
  const { rowId, budget, uses, season, standard, unit, rework, notes, onNotes, onCount } = props;
  const reach = rowId === null ? null : (rework.answer?.reach[rowId] ?? null);
  return (
    <div className="gaps">
      {budget === null ? (
        <p className="gaps-empty">Pick a drawer without faults to see whether its front comes in.</p>
      ) : (
        <BudgetPanel budget={budget} uses={uses} standard={standard} unit={unit} />
      )}
      <ReworkPanel rework={rework} reach={reach} onCount={onCount} />
      {budget === null ? null : (
        <>
          <DialInPanel
            key={rowId}
            budget={budget}
            standard={standard}
            unit={unit}
            notes={notes}
            onNotes={onNotes}
          />
          <SeasonPanel season={season} unit={unit} />
        </>
      )}
    </div>
  );
}
