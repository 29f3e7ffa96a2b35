import type { Point } from './types.ts';

/** Plain vector arithmetic on points; lengths in mm, angles in radians counter-clockwise from +x. */
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Point, by: number): Point => ({ x: a.x * by, y: a.y * by });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
export const distance = (a: Point, b: Point): number => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);
export const midpoint = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
/** Direction of a vector in radians, -π to π. */
export const angleOf = (a: Point): number => Math.atan2(a.y, a.x);

/** The vector at length 1; the zero vector has no direction and is a programmer's error. */
export function unit(a: Point): Point {
  const length = Math.hypot(a.x, a.y);
  if (length === 0) throw new RangeError('unit: the zero vector has no direction');
  return { x: a.x / length, y: a.y / length };
}

/** The vector turned a quarter counter-clockwise: the left-hand normal of a direction. */
export const leftOf = (a: Point): Point => ({ x: -a.y, y: a.x });

/** The point at an angle and distance from a centre: `polar({ x: 0, y: 0 }, 2, Math.PI / 2)` is (0, 2). */
export const polar = (center: Point, radius: number, angle: number): Point => ({
  x: center.x + radius * Math.cos(angle),
  y: center.y + radius * Math.sin(angle),
});

/** An angle brought into 0 (included) to 2π (excluded). */
export function turnOf(angle: number): number {
  const turn = angle % (2 * Math.PI);
  return turn < 0 ? turn + 2 * Math.PI : turn;
}
