import type { LeanLimit, PlaneLimit } from './types.ts';

/**
 * Limits with their fields always in the same order: the search reads them millions of times, which is many times
 * faster when all have one shape.
 */
export const planeLimit = (of: Omit<PlaneLimit, 'unless'>, unless: LeanLimit | null = null): PlaneLimit => ({
  limit: of.limit,
  against: of.against,
  least: of.least,
  normal: { x: of.normal.x, y: of.normal.y },
  offset: of.offset,
  part: { kind: of.part.kind, along: of.part.along, radius: of.part.radius },
  unless,
});

/** The terms that are not given are 0. */
export const leanLimit = (
  of: Pick<LeanLimit, 'limit' | 'against' | 'least'> & Partial<LeanLimit>,
): LeanLimit => ({
  limit: of.limit,
  against: of.against,
  least: of.least,
  base: of.base ?? 0,
  secant: of.secant ?? 0,
  cosine: of.cosine ?? 0,
  sine: of.sine ?? 0,
  tangent: of.tangent ?? 0,
});
