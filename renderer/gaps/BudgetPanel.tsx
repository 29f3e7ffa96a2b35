import { useMemo } from 'react';
import type { AdjustmentBudget } from '../../core/fit/budget/types.ts';
import { budgetIn } from '../../core/gap-view/budget-in.ts';
import { gapBars } from '../../core/gap-view/gap-bars.ts';
import { hangingWords } from '../../core/gap-view/hanging-words.ts';
import { reachWords, type Verdict } from '../../core/gap-view/reach-words.ts';
import { startSettings } from '../../core/gap-view/start-settings.ts';
import type { HangingUse } from '../../core/jigs/sharing/hung-by.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { GapBarLegend } from './GapBarLegend.tsx';
import { GapBarRow } from './GapBarRow.tsx';

interface BudgetPanelProps {
  readonly budget: AdjustmentBudget;
  readonly uses: readonly HangingUse[];
  readonly standard: ShopStandard;
  readonly unit: LengthUnit;
}

const MARKS: Readonly<Record<Verdict, string>> = {
  worst: '✓',
  likely: '⚠',
  unlikely: '✕',
  never: '✕',
  'no gap': '–',
};

/** Whether the front comes in with the adjusters alone, where to start them, and every edge as a bar. */
export function BudgetPanel({ budget, uses, standard, unit }: BudgetPanelProps) {
  const { bars, laps, axis, ticks } = useMemo(() => gapBars(budget, unit), [budget, unit]);
  const told = useMemo(() => budgetIn(budget, standard, unit), [budget, standard, unit]);
  const { verdict, words, scarcest } = reachWords(told, unit);
  const start = startSettings(budget, standard, unit);
  const hung = hangingWords(uses, unit);
  return (
    <section className="gaps-panel" aria-labelledby="gaps-budget">
      <h3 id="gaps-budget">Does it come in?</h3>
      <p className={`gaps-verdict gaps-verdict-${verdict.replace(' ', '-')}`}>
        <span aria-hidden="true">{MARKS[verdict]} </span>
        {words}
      </p>
      {scarcest.length === 0 ? null : <p>Scarcest between: {scarcest.join('; ')}.</p>}
      <h4>Set the adjusters to start</h4>
      {hung === null ? null : <p>{hung}</p>}
      {start.length === 0 ? (
        <p>Leave them all at 0.</p>
      ) : (
        <ol className="gaps-start">
          {start.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
      {bars.length === 0 ? null : (
        <>
          <h4>Edge by edge, along the travel of the adjuster</h4>
          <ul className="gaps-bars">
            {bars.map((bar) => (
              <GapBarRow key={bar.edge} bar={bar} axis={axis} ticks={ticks} unit={unit} />
            ))}
          </ul>
          <GapBarLegend />
        </>
      )}
      {laps.length === 0 || bars.length === 0 ? null : (
        <p>
          {laps.length === 1 ? 'The front laps' : 'The front laps its members'} at {listed(laps)}: no gap to
          see there.
        </p>
      )}
    </section>
  );
}

/** `left, right and top` */
const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
