import type { LengthUnit } from '../../core/order/types.ts';
import type { HoleSize, PartSizes } from '../../core/parts/part-sizes.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { LAYER_LINES } from './layer-lines.ts';

interface HoleTableProps {
  readonly sizes: PartSizes;
  readonly hole: number | null;
  readonly unit: LengthUnit;
  readonly onPick: (hole: number | null) => void;
}

/** The holes and pockets with their sizes and places; picking one dimensions it in the drawing. */
export function HoleTable({ sizes, hole, unit, onPick }: HoleTableProps) {
  const { holes } = sizes;
  if (holes.length === 0) return null;
  return (
    <section className="parts-panel parts-holes" aria-label="Holes">
      <h4>Holes</h4>
      <table>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">What</th>
            <th scope="col">Size</th>
            <th scope="col">From left</th>
            <th scope="col">From bottom</th>
          </tr>
        </thead>
        <tbody>
          {holes.map((own, index) => (
            <tr key={`${own.center.x} ${own.center.y}`}>
              <th scope="row">
                <button
                  type="button"
                  aria-pressed={index === hole}
                  aria-label={`Dimension hole ${index + 1}`}
                  onClick={() => onPick(index === hole ? null : index)}
                >
                  {index + 1}
                </button>
              </th>
              <td>{LAYER_LINES.find(({ operation }) => operation === own.operation)?.word}</td>
              <td className="app-figure">{sizeWords(own, unit)}</td>
              <td className="app-figure">{formatLength(own.fromLeft, unit)}</td>
              <td className="app-figure">{formatLength(own.fromBottom, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function sizeWords({ size, depth }: HoleSize, unit: LengthUnit): string {
  const length = (mm: number): string => formatLength(mm, unit);
  const deep = depth === null ? '' : `, ${length(depth)} deep`;
  return size.kind === 'round'
    ? `⌀ ${length(size.diameter)}${deep}`
    : `${length(size.width)} × ${length(size.height)}${deep}`;
}
