import type { LengthUnit } from '../../core/order/types.ts';
import type { PartSizes } from '../../core/parts/part-sizes.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { LongDimension } from '../drawing/LongDimension.tsx';
import type { Projection } from '../drawing/projection.ts';

interface PartSizesDrawnProps {
  readonly sizes: PartSizes;
  /** Index of the hole whose place is dimensioned. */
  readonly hole: number | null;
  readonly projection: Projection;
  readonly rem: number;
  readonly unit: LengthUnit;
}

/** The overall dimensions, a number beside each hole, and the place of the picked one. */
export function PartSizesDrawn({ sizes, hole, projection, rem, unit }: PartSizesDrawnProps) {
  const { origin, width, height, holes } = sizes;
  const at = (dx: number, dy: number) => projection.toScreen({ x: origin.x + dx, y: origin.y + dy });
  const picked = hole === null ? undefined : holes[hole];
  return (
    <g aria-hidden="true">
      <LongDimension
        from={at(0, 0)}
        to={at(width, 0)}
        off={2.9 * rem}
        text={formatLength(width, unit)}
        rem={rem}
      />
      <LongDimension
        from={at(0, 0)}
        to={at(0, height)}
        off={2.6 * rem}
        text={formatLength(height, unit)}
        rem={rem}
      />
      {holes.map(({ center }, index) => {
        const { x, y } = projection.toScreen(center);
        return (
          <text
            key={`${center.x} ${center.y}`}
            className="drawing-words parts-hole-number"
            x={x}
            y={y}
            dominantBaseline="central"
            textAnchor="middle"
          >
            {index + 1}
          </text>
        );
      })}
      {picked === undefined ? null : (
        <>
          <LongDimension
            from={at(0, picked.fromBottom)}
            to={at(picked.fromLeft, picked.fromBottom)}
            off={0}
            text={formatLength(picked.fromLeft, unit)}
            rem={rem}
          />
          <LongDimension
            from={at(picked.fromLeft, 0)}
            to={at(picked.fromLeft, picked.fromBottom)}
            off={0}
            text={formatLength(picked.fromBottom, unit)}
            rem={rem}
          />
        </>
      )}
    </g>
  );
}
