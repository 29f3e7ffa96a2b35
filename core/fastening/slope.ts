import type { Lean } from './types.ts';

/** The tangents of a screw's lean: how far it goes towards the side, and towards the rail, for 1 of depth. */
export interface Slope {
  readonly side: number;
  readonly rail: number;
}

export const STRAIGHT: Slope = { side: 0, rail: 0 };

/** Of a tangent: how near a lean one way is looked at. 6e-8 degrees. */
export const ONE_WAY = 1e-9;

export const oneWay = (way: 'side' | 'rail', tangent: number): Slope => ({ ...STRAIGHT, [way]: tangent });

/** All slopes between two, with what limits need of them: the least and the most of each. */
export interface SlopeBox {
  readonly side: readonly [number, number];
  readonly rail: readonly [number, number];
  /** Tangent of the whole angle from straight. */
  readonly tangent: readonly [number, number];
  /** Length along the screw for 1 of depth. */
  readonly secant: readonly [number, number];
}

export function slopeBox(least: Slope, most: Slope): SlopeBox {
  const low = Math.sqrt(least.side ** 2 + least.rail ** 2);
  const high = Math.sqrt(most.side ** 2 + most.rail ** 2);
  return {
    side: [least.side, most.side],
    rail: [least.rail, most.rail],
    tangent: [low, high],
    secant: [Math.sqrt(1 + low * low), Math.sqrt(1 + high * high)],
  };
}

/** One slope as a box: what holds of a box at best then holds of it exactly. */
export const onlySlope = (slope: Slope): SlopeBox => slopeBox(slope, slope);

export const tangentOf = ({ side, rail }: Slope): number => Math.sqrt(side * side + rail * rail);

const DEGREE = Math.PI / 180;

export const slopeOf = ({ side, rail }: Lean): Slope => ({
  side: Math.tan(side * DEGREE),
  rail: Math.tan(rail * DEGREE),
});

/** Degrees of an angle whose tangent is given. */
export const degreesOf = (tangent: number): number => Math.atan(tangent) / DEGREE;

export const leanOf = ({ side, rail }: Slope): Lean => ({ side: degreesOf(side), rail: degreesOf(rail) });
