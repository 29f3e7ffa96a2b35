import type { AidUse } from '../../jigs/aids/plan-types.ts';
import type { OrderPlan } from '../../jigs/plan-order.ts';
import { inWorkOrder } from '../../jigs/sharing/in-work-order.ts';
import type { JigUse } from '../../jigs/plan-types.ts';
import type { Jig } from '../../jigs/types.ts';
import type { Drawer } from '../../order/types.ts';
import type { LengthUnit } from '../../order/types.ts';
import { adjustWords } from '../../jigs/sharing/dial-way.ts';
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
  'adjust_mm',
  'adjust',
] as const;

/**
 * `schedule.csv`: which jig serves which drawer, in the order's order or, where drawers share jigs, in the one in
 * which jigs change hands least; then the aids to drilling. `overhang` is in the shop's unit, `adjust_mm` the
 * overhang wanted less the jig's, `adjust` how the front must go for that, and `edge` of a drill guide is the corner of the box.
 */
export const scheduleTable = (
  { uses, aids, sharing }: Pick<OrderPlan, 'uses' | 'aids' | 'sharing'>,
  unit: LengthUnit,
): string =>
  writeCsv(COLUMNS, [
    ...(sharing === undefined ? uses : inWorkOrder(uses)).map(
      ({ fit, edge, jig, overhang, adjustment }: JigUse) => [
        ...whose(fit.drawer, edge, jig),
        formatLength(overhang, unit),
        overhang,
        adjustment,
        adjustWords(edge, adjustment, unit),
      ],
    ),
    ...aids.map(({ fit, corner, jig }: AidUse) => [
      ...whose(fit.drawer, corner === null ? 'top' : `${corner.end} ${corner.hand}`, jig),
      '',
      '',
      '',
      '',
    ]),
  ]);

const whose = (drawer: Drawer, edge: string, jig: Jig) => [
  drawer.room ?? '',
  drawer.cabinet,
  drawer.drawer,
  drawer.qty,
  drawer.style,
  edge,
  jig.id,
  jig.kind,
  jig.hand ?? '',
];
