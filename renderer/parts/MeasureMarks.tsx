import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import type { Projection } from '../drawing/projection.ts';
import type { Measure } from './useMeasure.ts';

interface MeasureMarksProps {
  readonly measure: Measure;
  readonly projection: Projection;
  readonly rem: number;
  readonly unit: LengthUnit;
}

/** The points that are reached and picked, and the line between them with its length. */
export function MeasureMarks({ measure, projection, rem, unit }: MeasureMarksProps) {
  const { points, current, hovered, picked, measured } = measure;
  const reached = hovered ?? (current === null ? null : (points[current] ?? null));
  const [from, to] = picked.map((point) => projection.toScreen(point));
  const ring = reached === null ? null : projection.toScreen(reached);
  return (
    <g aria-hidden="true" className="parts-measure">
      {from !== undefined && to !== undefined && measured !== null ? (
        <>
          <path className="parts-measure-ways" d={`M ${from.x} ${from.y} H ${to.x} V ${to.y}`} />
          <path d={`M ${from.x} ${from.y} L ${to.x} ${to.y}`} />
          <text
            className="drawing-words"
            x={(from.x + to.x) / 2}
            y={(from.y + to.y) / 2 - 0.8 * rem}
            textAnchor="middle"
          >
            {formatLength(measured.distance, unit)}
          </text>
        </>
      ) : null}
      {[from, to].map((point, index) =>
        point === undefined ? null : (
          <g key={index === 0 ? 'from' : 'to'}>
            <circle className="parts-measure-picked" cx={point.x} cy={point.y} r={0.35 * rem} />
            <text className="drawing-words" x={point.x + 0.6 * rem} y={point.y + 1.1 * rem}>
              {index === 0 ? 'A' : 'B'}
            </text>
          </g>
        ),
      )}
      {ring === null ? null : (
        <circle className="parts-measure-reached" cx={ring.x} cy={ring.y} r={0.6 * rem} />
      )}
    </g>
  );
}
