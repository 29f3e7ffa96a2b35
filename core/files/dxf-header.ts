import type { Bounds } from '../geometry/measure.ts';
import type { LengthUnit } from '../order/types.ts';
import { point, section, text, whole, type Tag } from './dxf-tags.ts';

/** $INSUNITS and $MEASUREMENT of a unit (DXF reference, header variables; requirement DXF-3). */
const DXF_UNIT = { mm: { insunits: 4, measurement: 1 }, in: { insunits: 1, measurement: 0 } } as const;

/** $ACADVER of the two versions (DXF reference). */
const ACADVER = { R12: 'AC1009', R2000: 'AC1015' } as const;

/**
 * The header of both versions: version, unit and true extents. R12 has no $INSUNITS of its own; readers that
 * don't know it skip it, and those that do no longer ask.
 */
export const header = (
  version: keyof typeof ACADVER,
  unit: LengthUnit,
  extents: Bounds,
  more: readonly Tag[] = [],
): readonly Tag[] =>
  section('HEADER', [
    ...variable('$ACADVER', [text(1, ACADVER[version])]),
    ...variable('$DWGCODEPAGE', [text(3, 'ANSI_1252')]),
    ...variable('$INSBASE', point(10, { x: 0, y: 0 })),
    ...variable('$EXTMIN', point(10, extents.min)),
    ...variable('$EXTMAX', point(10, extents.max)),
    ...variable('$INSUNITS', [whole(70, DXF_UNIT[unit].insunits)]),
    ...variable('$MEASUREMENT', [whole(70, DXF_UNIT[unit].measurement)]),
    ...more,
  ]);

export const variable = (name: string, tags: readonly Tag[]): readonly Tag[] => [text(9, name), ...tags];
