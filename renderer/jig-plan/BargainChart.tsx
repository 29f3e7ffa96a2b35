import { useId } from 'react';
import type { Bargain } from '../../core/jigs/sharing/picked-point.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { chartScale } from './chart-scale.ts';
import { bargainWords } from './bargain-words.ts';

interface BargainChartProps {
  readonly offered: readonly Bargain[];
  readonly picked: Bargain | undefined;
  readonly unit: LengthUnit;
  readonly onSharing: (sharing: JigSharing) => void;
}

/** Every bargain as a point: jigs to the right, adjustment up. The points are one group of radio buttons. */
export function BargainChart({ offered, picked, unit, onSharing }: BargainChartProps) {
  const name = useId();
  const scale = chartScale(offered);
  const places = offered.map((bargain) => ({ bargain, ...scale.place(bargain) }));
  const most = Math.max(...offered.map(({ total }) => total));
  return (
    <figure className="jig-plan-chart">
      <div className="jig-plan-plot" role="radiogroup" aria-label="How many jigs to make">
        <svg viewBox={`0 0 ${scale.width} ${scale.height}`} aria-hidden="true">
          <path className="jig-plan-axis" d={scale.axes} />
          <path className="jig-plan-stairs" d={scale.stairs} />
          <text x={scale.left} y={14}>
            {formatLength(most, unit)} to adjust in all
          </text>
          {places
            .filter(({ isLabelled }) => isLabelled)
            .map(({ bargain, x }) => (
              <text key={bargain.jigs} x={x} y={scale.height - 6} textAnchor="middle">
                {bargain.jigs}
              </text>
            ))}
        </svg>
        {places.map(({ bargain, x, y }) => (
          <input
            key={`${bargain.sharing}`}
            type="radio"
            name={name}
            aria-label={bargainWords(bargain, unit)}
            title={bargainWords(bargain, unit)}
            checked={bargain === picked}
            onChange={() => onSharing(bargain.sharing)}
            style={{ left: `${(100 * x) / scale.width}%`, top: `${(100 * y) / scale.height}%` }}
          />
        ))}
      </div>
      <figcaption>
        Jigs to make, from left to right; what they leave to the adjusters, upwards. The last point is each
        distinct overhang with its own jig.
      </figcaption>
    </figure>
  );
}
