import type { Outcome } from '../findings/finding.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Part } from '../parts/types.ts';
import type { Pausing } from '../sheets/packer/pausing.ts';
import { packingOrder } from '../sheets/pack-order.ts';
import type { SheetPlan } from '../sheets/types.ts';

/** Any number would do; always the same, so that an order gives the same sheets (requirement EXP). */
const SEED = 1;

/** Lays parts out on the sheets that a machine's profile has in stock, with pauses. */
export function packParts(
  parts: readonly Part[],
  { sheet, sheets, kerf }: MachineProfile,
): Pausing<Outcome<SheetPlan>> {
  const { stock, edgeMargin, spacing, turn, effort } = sheets;
  return packingOrder(
    parts,
    stock.map((size) => ({ ...size, ...sheet })),
    { edgeMargin, spacing, kerf, turn, effort, keepUpright: [], seed: SEED },
  );
}
