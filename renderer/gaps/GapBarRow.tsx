import type { Span } from '../../core/fit/budget/types.ts';
import type { GapBar, NeededReach, Tick } from '../../core/gap-view/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { GapBarDrawing } from './GapBarDrawing.tsx';

interface GapBarRowProps {
  readonly bar: GapBar;
  readonly axis: Span;
  readonly ticks: readonly Tick[];
  readonly unit: LengthUnit;
}

/** One edge: its bar, its figures, and where most of its spread comes from. */
export function GapBarRow({ bar, axis, ticks, unit }: GapBarRowProps) {
  const { edge, adjuster, gap, limits, available, target, needed, margin, dominant } = bar;
  const length = (mm: number): string => formatLength(mm, unit);
  const [worst, likely] = [reachWords(needed.worst, unit), reachWords(needed.likely, unit)];
  const short = margin.worst < -1e-9;
  return (
    <li>
      <h5 className="gaps-edge">
        {edge}, gap <span className="app-figure">{length(gap)}</span>
        <span className="gaps-soft">
          {' '}
          may be {length(limits.least)} to {length(limits.most)}
        </span>
      </h5>
      <GapBarDrawing bar={bar} axis={axis} ticks={ticks} />
      <p className="gaps-words">
        The {adjuster === 'side' ? 'side adjuster goes' : 'height adjusters go'}{' '}
        {signed(available.least, unit)} to {signed(available.most, unit)} and{' '}
        {adjuster === 'side' ? 'starts' : 'start'} at {signed(target, unit)}.{' '}
        {worst === likely ? `At worst and likely alike ${worst}.` : `At worst ${worst}; likely ${likely}.`}
      </p>
      <p className="gaps-words">
        <strong className={short ? 'gaps-wrong' : undefined}>
          {short ? '✕ ' : ''}Margin <span className="app-figure">{signed(margin.worst, unit)}</span> at worst,{' '}
          <span className="app-figure">{signed(margin.likely, unit)}</span> likely.
        </strong>
        {dominant === null
          ? ''
          : ` Most of the spread, ${Math.round(100 * dominant.share)} %, comes from the ${dominant.source}.`}
      </p>
    </li>
  );
}

const reachWords = (needed: NeededReach, unit: LengthUnit): string =>
  needed.free
    ? `any setting from ${signed(needed.least, unit)} to ${signed(needed.most, unit)} will do`
    : `it must reach ${signed(needed.least, unit)} to ${signed(needed.most, unit)}`;

/** With its sign: `+1.5 mm`, `−1.5 mm`, `0 mm`. */
function signed(mm: number, unit: LengthUnit): string {
  const words = formatLength(Math.abs(mm), unit);
  if (words === formatLength(0, unit)) return words;
  return `${mm > 0 ? '+' : '−'}${words}`;
}
