import type { Vec3 } from '../jigs/types.ts';
import { dot, scale } from './vec.ts';

const unit = (v: Vec3): Vec3 => scale(v, 1 / Math.sqrt(dot(v, v)));

/** Light on the bench: as much from everywhere, and from two places of which the directions are given, length 1. */
export const LIGHT = {
  everywhere: 1.5,
  main: { from: unit({ x: -300, y: -500, z: 900 }), strength: 1.6 },
  side: { from: unit({ x: 600, y: 200, z: 200 }), strength: 0.5 },
} as const;

/**
 * How much of its colour, in linear light, a matt face sends on, from 0; more than 1 is white sooner. It sends 1/pi of
 * what it gets in each direction (Lambert's law). `normal` is out of the wood, length 1.
 */
export const lightOn = (normal: Vec3): number =>
  (LIGHT.everywhere +
    [LIGHT.main, LIGHT.side].reduce(
      (sum, { from, strength }) => sum + strength * Math.max(0, dot(normal, from)),
      0,
    )) /
  Math.PI;
