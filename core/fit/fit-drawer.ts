import type { Outcome } from '../findings/finding.ts';
import type { Drawer, Edge, LengthUnit } from '../order/types.ts';
import type { ResolvedRules } from '../rules/resolved.ts';
import type { ShopStandard } from '../rules/types.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { checkBox } from './check-box.ts';
import { checkFront } from './check-front.ts';
import { overhangs } from './overhangs.ts';
import type { DrawerFit } from './types.ts';

/**
 * Fits one drawer: sizes that the order does not give are derived from the opening, sizes that it gives
 * are used and checked. Lengths in mm.
 *
 * Derived: front = opening + overlays; box = opening - 2 clearances, by opening - lift - top clearance. A given
 * front that is wider or narrower by more than the standard lets pass laps half of the difference on either side.
 * `unit` is what findings are told in.
 */
export function fitDrawer(
  drawer: Drawer,
  rules: ResolvedRules,
  standard: ShopStandard,
  unit: LengthUnit,
): Outcome<DrawerFit> {
  const overlay = {
    left: rules.edges.left.overlay,
    right: rules.edges.right.overlay,
    top: rules.edges.top.overlay,
    bottom: rules.edges.bottom.overlay,
  };
  const derived = {
    frontW: drawer.openingW + overlay.left + overlay.right,
    frontH: drawer.openingH + overlay.top + overlay.bottom,
    boxW: drawer.openingW - 2 * rules.runningClearance.value,
    boxH: drawer.openingH - rules.lift.value - rules.topClearance.value,
  };
  const frontW = drawer.frontW ?? derived.frontW;
  const frontH = drawer.frontH ?? derived.frontH;
  const boxW = drawer.boxW ?? derived.boxW;
  const boxH = drawer.boxH ?? derived.boxH;
  const runningClearance = (drawer.openingW - boxW) / 2;
  const excess = frontW - derived.frontW;
  const shift = Math.abs(excess) > standard.limits.sizeDifference.value + SAME_LENGTH ? excess / 2 : 0;

  const fit: DrawerFit = {
    drawer,
    rules,
    unit,
    overhang: overhangs({
      overlay: { ...overlay, left: overlay.left + shift, right: overlay.right + shift },
      runningClearance,
      lift: rules.lift.value,
      startLow: rules.startLow.value,
      frontH,
      boxH,
    }),
    frontW,
    frontH,
    frontThickness: drawer.frontThickness ?? standard.front.thickness.value,
    boxW,
    boxH,
    boxSide: drawer.boxSide ?? standard.box.sideThickness.value,
    boxFront: drawer.boxFront ?? standard.box.frontThickness.value,
    runningClearance,
    gaps: predictGaps(rules, excess, frontH - derived.frontH),
  };
  return { value: fit, findings: [...checkBox(fit), ...checkFront(fit, derived, standard)] };
}

/**
 * The gaps after dialling in. A front that is wider than its place is centred, so each side loses half of
 * the excess; its bottom edge lines up with its neighbours', so the top loses all of the excess height.
 */
function predictGaps(rules: ResolvedRules, extraW: number, extraH: number): Record<Edge, number | null> {
  const gap = (edge: Edge, excess: number): number | null => {
    const { condition } = rules.edges[edge];
    return condition.kind === 'inset' || condition.kind === 'share' ? condition.gap - excess : null;
  };
  return {
    left: gap('left', extraW / 2),
    right: gap('right', extraW / 2),
    top: gap('top', extraH),
    bottom: gap('bottom', 0),
  };
}
