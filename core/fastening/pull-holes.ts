import type { DrawerFit } from '../fit/types.ts';
import type { Point } from '../geometry/types.ts';
import type { ShopStandard } from '../rules/types.ts';

/** Upright holes through front and box front, back view, mm. */
export interface PullHoles {
  readonly diameter: number;
  readonly centers: readonly Point[];
}

/**
 * Where the holes of a drawer's pulls are: one pull at half the width, two at a quarter from each side; none
 * where the order names no pull that the standard knows.
 */
export function pullHoles({ drawer, frontW, frontH }: DrawerFit, { pulls }: ShopStandard): PullHoles {
  const choice = drawer.pullChoice;
  const rule = choice === undefined ? undefined : pulls[choice.sort];
  if (choice === undefined || rule === undefined) return { diameter: 0, centers: [] };
  const count = choice.count ?? (frontW >= rule.pairFrom.value ? 2 : 1);
  const y = rule.height.from === 'middle' ? frontH / 2 : frontH - rule.height.distance.value;
  const half = rule.holes === 1 ? 0 : (choice.centers ?? rule.centers.value) / 2;
  const middles = count === 1 ? [frontW / 2] : [frontW / 4, (3 * frontW) / 4];
  return {
    diameter: rule.holeDiameter.value,
    centers: middles.flatMap((x) =>
      half === 0
        ? [{ x, y }]
        : [
            { x: x - half, y },
            { x: x + half, y },
          ],
    ),
  };
}
