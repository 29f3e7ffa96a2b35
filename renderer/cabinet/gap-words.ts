import type { GapDimension } from '../../core/elevation/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

/** The figure at a gap; an overlap says that it is one. */
export const gapFigure = ({ mm, kind }: GapDimension, unit: LengthUnit): string =>
  mm < 0 && kind === 'between' ? `overlap ${formatLength(-mm, unit)}` : formatLength(mm, unit);

/** What a gap lies between, for the list of gaps. */
export function gapWords(gap: GapDimension, nameOf: (rowId: string) => string): string {
  const [first = '', second = ''] = gap.rowIds.map(nameOf);
  switch (gap.kind) {
    case 'between':
      return `between ${first} and ${second}`;
    case 'frame':
      return `${first}, ${gap.edge} edge to the frame`;
    case 'reveal':
      return `${first}, ${gap.edge} edge to the cabinet's outside`;
    default:
      return `${first}, ${gap.edge} edge to a front that is not drawn`;
  }
}
