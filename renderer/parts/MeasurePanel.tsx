import type { Point } from '../../core/geometry/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { measureBetween } from '../../core/parts/measure-between.ts';
import type { SnapKind, SnapPoint } from '../../core/parts/snap-points.ts';
import { formatLength } from '../../core/units/format-length.ts';
import type { Measure } from './useMeasure.ts';

const KIND_WORDS: Readonly<Record<SnapKind, string>> = {
  corner: 'corner',
  middle: 'middle of a side',
  center: 'centre',
  quarter: 'edge of a circle',
};

interface MeasurePanelProps {
  readonly measure: Measure;
  /** The part's lower left extent. */
  readonly origin: Point;
  readonly unit: LengthUnit;
}

/** What is measured between two points, and the buttons that go through the points without a mouse. */
export function MeasurePanel({ measure, origin, unit }: MeasurePanelProps) {
  const { points, current, picked, measured, step, pickCurrent, clear } = measure;
  const reached = current === null ? undefined : points[current];
  const length = (mm: number): string => formatLength(mm, unit);
  const place = (point: SnapPoint): string => {
    const { dx, dy } = measureBetween(origin, point);
    return `${KIND_WORDS[point.kind]}, ${length(dx)} from left, ${length(dy)} from bottom`;
  };
  const told = (): string => {
    if (reached !== undefined && current !== null) {
      return `Point ${current + 1} of ${points.length}: ${place(reached)}`;
    }
    if (measured !== null) return `From A to B: ${length(measured.distance)}`;
    return picked.length === 0
      ? 'Click two points of the part, or go through them with the buttons.'
      : 'A is picked; pick the second point.';
  };
  return (
    <section className="parts-panel parts-measuring" aria-label="Measure">
      <h4>Measure</h4>
      <div className="parts-buttons">
        <button type="button" onClick={() => step(-1)}>
          Previous point
        </button>
        <button type="button" onClick={() => step(1)}>
          Next point
        </button>
        <button type="button" onClick={pickCurrent} disabled={reached === undefined}>
          Pick this point
        </button>
        <button type="button" onClick={clear} disabled={picked.length === 0}>
          Begin again
        </button>
      </div>
      {/* Always as high, so that the drawing does not jump while one measures. */}
      <dl className="parts-reading">
        <div>
          <dt>Distance</dt>
          <dd className="app-figure parts-reading-large">
            {measured === null ? '–' : length(measured.distance)}
          </dd>
        </div>
        <div>
          <dt>Across, dx</dt>
          <dd className="app-figure">{measured === null ? '–' : length(measured.dx)}</dd>
        </div>
        <div>
          <dt>Up, dy</dt>
          <dd className="app-figure">{measured === null ? '–' : length(measured.dy)}</dd>
        </div>
      </dl>
      <p role="status">{told()}</p>
    </section>
  );
}
