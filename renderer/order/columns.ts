import type { OrderColumn } from '../../core/order/columns.ts';
import type { Fastening } from '../../core/fastening/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { roundTo } from '../../core/units/tolerances.ts';

/** A column of the order's table: a cell of the draft, or something that is worked out from it. */
export type GridColumn =
  | { readonly kind: 'cell'; readonly id: OrderColumn; readonly title: string; readonly width: number }
  | {
      readonly kind: 'worked-out';
      readonly id: string;
      readonly title: string;
      readonly width: number;
      readonly text: (fit: DrawerFit, unit: LengthUnit, fastening: Fastening | null) => string;
    };

const cell = (id: OrderColumn, title: string, width: number): GridColumn => ({
  kind: 'cell',
  id,
  title,
  width,
});

const overhang = (edge: 'bottom' | 'left' | 'right', title: string): GridColumn => ({
  kind: 'worked-out',
  id: `overhang-${edge}`,
  title,
  width: 5.75,
  text: (fit, unit) => formatLength(fit.overhang[edge], unit),
});

/** Which drawer it is, widths in rem. */
const NAMES: readonly GridColumn[] = [cell('cabinet', 'Cabinet', 4.75), cell('drawer', 'Drawer', 7)];

/** The tightest margin of the drawer's screws. */
const SCREWS: GridColumn = {
  kind: 'worked-out',
  id: 'screw-margin',
  title: 'Screws, to spare',
  width: 6.5,
  text: (_fit, unit, fastening) => {
    if (fastening === null) return '';
    if (fastening.screw === null) return '✕ none';
    const { tightest, impossible } = fastening;
    if (impossible.length > 0) return `✕ ${impossible.length} miss`;
    return tightest === null ? '' : formatLength(roundTo(tightest.over, 2), unit);
  },
};

/** What comes out, in sight beside the names. */
const READINGS: readonly GridColumn[] = [
  overhang('bottom', 'Bottom overhang'),
  overhang('left', 'Left overhang'),
  overhang('right', 'Right overhang'),
  SCREWS,
];

/** What every order has; the cells are in the order of an order's required columns, as they are pasted. */
const USUAL: readonly GridColumn[] = [
  cell('qty', 'Qty', 3),
  cell('style', 'Style', 8),
  cell('opening_w', 'Opening width', 5.5),
  cell('opening_h', 'Opening height', 5.5),
  cell('room', 'Room', 8),
];

const RARE: readonly GridColumn[] = [
  cell('cabinet_kind', 'Cabinet kind', 8),
  cell('column', 'Column', 5),
  cell('position', 'Position', 6),
  cell('left', 'Left edge', 11),
  cell('right', 'Right edge', 11),
  cell('top', 'Top edge', 11),
  cell('bottom', 'Bottom edge', 11),
  cell('front', 'Front', 9),
  cell('front_w', 'Front width', 7),
  cell('front_h', 'Front height', 7),
  cell('front_thickness', 'Front thickness', 7),
  cell('species', 'Species', 9),
  cell('box_w', 'Box width', 7),
  cell('box_h', 'Box height', 7),
  cell('box_d', 'Box depth', 7),
  cell('box_side', 'Box side', 6),
  cell('box_front', 'Box front', 6),
  cell('pull', 'Pull', 7),
  cell('note', 'Note', 16),
];

/** The columns that are shown, few or all. */
export const gridColumns = (all: boolean): readonly GridColumn[] =>
  all ? [...NAMES, ...READINGS, ...USUAL, ...RARE] : [...NAMES, ...READINGS, ...USUAL];
