import type { SampledShare } from '../../core/fit/budget/share-interval.ts';
import { REWORK_SAMPLES } from '../../core/gap-view/order-rework.ts';
import { reachShareWords, reworkWords } from '../../core/gap-view/rework-words.ts';
import type { ReworkShown } from './GapsView.tsx';

interface ReworkPanelProps {
  readonly rework: ReworkShown;
  /** Of the picked row's fronts; null before they are counted. */
  readonly reach: SampledShare | null;
  readonly onCount: () => void;
}

/** How many of the order's fronts the adjusters will not bring in. */
export function ReworkPanel({ rework: { state, answer }, reach, onCount }: ReworkPanelProps) {
  return (
    <section className="gaps-panel" aria-labelledby="gaps-rework">
      <h3 id="gaps-rework">The whole order</h3>
      <div role="status">
        {state === 'counting' ? <p>Counting …</p> : null}
        {state === 'failed' ? <p className="gaps-wrong">✕ The program failed while it counted.</p> : null}
        {state === 'earlier' ? <p>⚠ Of the order as it was before the last changes:</p> : null}
        {answer === null ? (
          state === 'counted' ? (
            <p>No front of the order can be counted.</p>
          ) : null
        ) : (
          <>
            <p className="gaps-figure">{reworkWords(answer.rework)}</p>
            {reach === null ? null : <p>{reachShareWords(reach)}</p>}
          </>
        )}
      </div>
      <p className="gaps-note">
        Counted from {REWORK_SAMPLES.samples} fronts of each size, drawn by the shop standard’s tolerances; in
        brackets the 95 % interval.
      </p>
      <button type="button" disabled={state === 'counting'} onClick={onCount}>
        {answer === null ? 'Count the rework' : 'Count again'}
      </button>
    </section>
  );
}
