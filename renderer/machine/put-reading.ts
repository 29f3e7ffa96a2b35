import type { CouponReading } from '../../core/calibration/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { writeLength } from '../../core/units/write-length.ts';
import { withValue, type Json, type Path } from '../document/json.ts';

/**
 * A profile's document with what a coupon told; what it did not tell stays. A profile for no machine has no kerf.
 * Lengths are written with their unit, whichever is shown.
 */
export function putReading(document: Json, { kerf, fit }: CouponReading, { kind }: MachineProfile): Json {
  const read: readonly (readonly [Path, number | null])[] = [
    [['kerf'], kind === 'none' ? null : kerf],
    [['fit', 'pin'], fit.pin],
    [['fit', 'slot'], fit.slot],
  ];
  return read.reduce<Json>(
    (now, [path, mm]) => (mm === null ? now : withValue(now, path, writeLength(mm, 'mm'))),
    document,
  );
}
