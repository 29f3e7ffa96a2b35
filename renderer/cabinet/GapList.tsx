import type { Elevation } from '../../core/elevation/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { gapFigure, gapWords } from './gap-words.ts';

interface GapListProps {
  readonly elevation: Elevation;
  readonly unit: LengthUnit;
}

/** The gaps of the drawing in words, for those who do not see it. */
export function GapList({ elevation, unit }: GapListProps) {
  const names = new Map(elevation.drawers.map(({ rowId, name }) => [rowId, name]));
  const nameOf = (rowId: string): string => names.get(rowId) ?? '';
  return (
    <details className="cabinet-gap-list">
      <summary>Gaps in words ({elevation.dimensions.length})</summary>
      <ul>
        {elevation.dimensions.map((gap) => (
          <li key={`${gap.rowIds.join(' ')} ${gap.edge}`}>
            <span className="app-figure">{gapFigure(gap, unit)}</span> {gapWords(gap, nameOf)}
          </li>
        ))}
      </ul>
    </details>
  );
}
