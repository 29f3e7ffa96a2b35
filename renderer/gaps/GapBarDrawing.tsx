import { useId } from 'react';
import type { Span } from '../../core/fit/budget/types.ts';
import type { GapBar, Tick } from '../../core/gap-view/types.ts';

interface GapBarDrawingProps {
  readonly bar: GapBar;
  readonly axis: Span;
  readonly ticks: readonly Tick[];
}

/** An edge's adjuster from end to end, what may be asked of it about its target, and what it must reach. */
export function GapBarDrawing({ bar, axis, ticks }: GapBarDrawingProps) {
  const hatch = useId();
  const at = (mm: number): string => `${(100 * (mm - axis.least)) / (axis.most - axis.least)}%`;
  const wide = ({ least, most }: Span): string => `${(100 * (most - least)) / (axis.most - axis.least)}%`;
  const { available, spread, needed, target } = bar;
  return (
    <svg className="gaps-bar" aria-hidden="true">
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className="gaps-hatch" x1="0" y1="0" x2="0" y2="6" />
        </pattern>
      </defs>
      {ticks.map((tick) => (
        <g key={tick.at}>
          <line className="gaps-tick" x1={at(tick.at)} x2={at(tick.at)} y1="0" y2="48" />
          <text className="gaps-tick-words" x={at(tick.at)} y="62" textAnchor="middle">
            {tick.words}
          </text>
        </g>
      ))}
      <rect className="gaps-available" x={at(available.least)} width={wide(available)} y="3" height="14" />
      <rect
        className="gaps-worst"
        x={at(spread.worst.least)}
        width={wide(spread.worst)}
        y="23"
        height="14"
        fill={`url(#${hatch})`}
      />
      <rect
        className="gaps-likely"
        x={at(spread.likely.least)}
        width={wide(spread.likely)}
        y="26"
        height="8"
      />
      <g className={needed.worst.free ? 'gaps-needed gaps-needed-free' : 'gaps-needed'}>
        <line x1={at(needed.worst.least)} x2={at(needed.worst.most)} y1="43" y2="43" />
        <line x1={at(needed.worst.least)} x2={at(needed.worst.least)} y1="39" y2="47" />
        <line x1={at(needed.worst.most)} x2={at(needed.worst.most)} y1="39" y2="47" />
      </g>
      <line className="gaps-target" x1={at(target)} x2={at(target)} y1="0" y2="48" />
      <svg x={at(target)} y="0" overflow="visible">
        <path className="gaps-target-head" d="M -5 -1 L 5 -1 L 0 7 Z" />
      </svg>
    </svg>
  );
}
