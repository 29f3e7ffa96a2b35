import { sameLength } from '../../units/tolerances.ts';
import type { DrawerFit } from '../types.ts';
import type { Move } from './places.ts';

/** The corner at which a shop registers its fronts: the jig at that side sets, the one at the other checks. */
export type RegisteredSide = 'left' | 'right';

/**
 * The move that brings a front, hung exactly as designed with every adjuster at 0, to where its gaps are as
 * predicted: up by the start-low allowance, and sideways by half of what a front that is a little wider or
 * narrower than its place lacks or has over.
 */
export function startMove(fit: DrawerFit, registered: RegisteredSide): Move {
  const { left, right } = fit.rules.edges;
  const half = (fit.frontW - (fit.drawer.openingW + left.overlay + right.overlay)) / 2;
  const hung = fit.overhang[registered] - fit.runningClearance;
  const wanted = fit.rules.edges[registered].overlay + half;
  const outward = sameLength(wanted, hung) ? 0 : wanted - hung;
  return {
    side: registered === 'left' ? -outward || 0 : outward,
    heightLeft: fit.rules.startLow.value,
    heightRight: fit.rules.startLow.value,
  };
}
