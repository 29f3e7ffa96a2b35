import type { JigUse } from '../../jigs/plan-types.ts';
import type { LengthUnit } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import { writeCsv } from '../csv.ts';

const COLUMNS = [
  'room',
  'cabinet',
  'drawer',
  'qty',
  'style',
  'edge',
  'jig',
  'kind',
  'hand',
  'overhang',
  'overhang_mm',
] as const;

/** `schedule.csv`: which jig serves which drawer, in the order's order; `overhang` is in the shop's unit. */
export const scheduleTable = (uses: readonly JigUse[], unit: LengthUnit): string =>
  writeCsv(
    COLUMNS,
    uses.map(({ fit, edge, jig, overhang }) => [
      fit.drawer.room ?? '',
      fit.drawer.cabinet,
      fit.drawer.drawer,
      fit.drawer.qty,
      fit.drawer.style,
      edge,
      jig.id,
      jig.kind,
      jig.hand ?? '',
      formatLength(overhang, unit),
      overhang,
    ]),
  );
