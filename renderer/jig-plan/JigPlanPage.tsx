import { bargains, pickedBargain } from '../../core/jigs/sharing/picked-point.ts';
import { proofWords } from '../../core/jigs/sharing/proof-words.ts';
import type { StudyOutcome } from '../../core/jigs/sharing/study-jigs.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { Designed } from '../../core/session/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import '../document/document.css';
import { BargainChart } from './BargainChart.tsx';
import { BargainTable } from './BargainTable.tsx';
import './jig-plan.css';
import { ServedJigs } from './ServedJigs.tsx';

export interface JigPlanPageProps {
  readonly draft: Draft;
  /** Null until the draft has been designed. */
  readonly designed: Designed | null;
  /** Null while it is being worked out. */
  readonly study: StudyOutcome | null;
  readonly unit: LengthUnit;
  readonly onSharing: (sharing: JigSharing) => void;
  /** Goes to a row of the order. */
  readonly onRow: (rowId: string) => void;
}

/** How many jigs to make against how much to adjust, and which jig serves which drawer. */
export function JigPlanPage({ draft, designed, study, unit, onSharing, onRow }: JigPlanPageProps) {
  const trade = study?.study ?? null;
  const refusal = study?.refusal ?? null;
  const sharing = designed?.sharing ?? null;
  const offered = trade === null ? [] : bargains(trade);
  const picked = pickedBargain(offered, draft.sharing);
  const proved = sharing ?? trade?.fewest ?? null;
  return (
    <div className="document jig-plan">
      <div className="document-head">
        <h2>Jig plan</h2>
      </div>
      <div className="document-form">
        <section className="document-section" aria-labelledby="jig-plan-trade">
          <h3 id="jig-plan-trade">Jigs against adjustment</h3>
          <p>
            One jig can set drawers whose overhangs differ a little, as far as the slides’ adjusters put that
            right besides what the shop’s tolerances ask of them. Pick how many jigs to make.
          </p>
          {study === null ? <p role="status">The plans are being worked out…</p> : null}
          {refusal === null ? null : <p role="alert">{refusal}. Each distinct overhang has its own jig.</p>}
          {offered.length === 0 ? null : (
            <BargainChart offered={offered} picked={picked} unit={unit} onSharing={onSharing} />
          )}
        </section>
        <section className="document-section" aria-labelledby="jig-plan-jigs">
          <h3 id="jig-plan-jigs">Jigs and their drawers</h3>
          {designed === null ? (
            <p>The order is still being worked out.</p>
          ) : (
            <ServedJigs designed={designed} unit={unit} onRow={onRow} />
          )}
        </section>
      </div>
      <aside className="document-section" aria-labelledby="jig-plan-numbers">
        <h3 id="jig-plan-numbers">In numbers</h3>
        {offered.length === 0 ? <p>Nothing yet.</p> : <BargainTable {...{ offered, picked, unit }} />}
        {proved === null ? null : (
          <p>
            {sharing === null ? 'Of the fewest jigs: ' : ''}
            {proofWords(proved, unit)}
          </p>
        )}
        {sharing === null ? (
          <p>Now each distinct overhang has its own jig, and nothing more is left to the adjusters.</p>
        ) : (
          <p>
            The plan leaves {formatLength(sharing.totalAdjustment, unit)} in all to adjust,{' '}
            {formatLength(sharing.largestAdjustment, unit)} at most on one drawer’s edge.
          </p>
        )}
      </aside>
    </div>
  );
}
