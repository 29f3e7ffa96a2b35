import type { PlaceLimits } from './limits/types.ts';
import { regionAt } from './possible.ts';
import { degreesOf, tangentOf } from './slope.ts';
import type { Slope } from './slope.ts';
import type { LimitName } from './types.ts';

/** Of the smallest slope: a screw so much straighter is tried without each limit in turn. */
const STRAIGHTER = 1e-3;

/**
 * The limits that keep the angle from being smaller: those without which a slightly straighter screw has an
 * entry. Where several stand for each other, so that no single one matters, none is named.
 */
export function activeLimits(limits: PlaceLimits, smallest: Slope): readonly LimitName[] {
  if (degreesOf(tangentOf(smallest)) === 0) return [];
  const less = {
    side: smallest.side * (1 - STRAIGHTER),
    rail: smallest.rail * (1 - STRAIGHTER),
  };
  const names = new Set([...limits.planes, ...limits.leans, ...limits.holes].map(({ limit }) => limit));
  return [...names].filter((name) => regionAt(without(limits, name), less) !== null);
}

const without = (limits: PlaceLimits, name: LimitName): PlaceLimits => ({
  ...limits,
  planes: limits.planes.filter(({ limit }) => limit !== name),
  leans: limits.leans.filter(({ limit }) => limit !== name),
  holes: limits.holes.filter(({ limit }) => limit !== name),
});
