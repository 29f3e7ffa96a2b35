import type { Outcome } from '../findings/finding.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Part } from '../parts/types.ts';
import { packOrder } from '../sheets/pack-order.ts';
import type { SheetOptions, SheetPlan } from '../sheets/types.ts';

/** Any number would do; always the same, so that an order gives the same sheets (requirement EXP). */
const SEED = 1;

/** Lays parts out on the sheets that a machine's profile has in stock. */
export function packParts(
  parts: readonly Part[],
  { sheet, sheets, kerf }: MachineProfile,
  watch: Pick<SheetOptions, 'stop' | 'onProgress'> = {},
): Outcome<SheetPlan> {
  const { stock, edgeMargin, spacing, turn, effort } = sheets;
  return packOrder(
    parts,
    stock.map((size) => ({ ...size, ...sheet })),
    { edgeMargin, spacing, kerf, turn, effort, keepUpright: [], seed: SEED, ...watch },
  );
}
