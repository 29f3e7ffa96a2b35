import type { Vec3 } from '../jigs/types.ts';
import { cross } from '../jigs/vec3.ts';
import type { Dimension, KeepOut, Line } from './types.ts';
import { UP } from './vec.ts';

/** mm, from the tip of an arrow back along its line to its barbs. */
export const HEAD = { left: 14, tool: 12 } as const;

const plus = (a: Vec3, b: Vec3, times = 1): Vec3 => ({
  x: a.x + b.x * times,
  y: a.y + b.y * times,
  z: a.z + b.z * times,
});

/** Length 1, or null for no direction. */
function along([from, to]: Line): Vec3 | null {
  const way = plus(to, from, -1);
  const length = Math.hypot(way.x, way.y, way.z);
  return length < 1e-6 ? null : { x: way.x / length, y: way.y / length, z: way.z / length };
}

/** A line with a head of strokes at its end, flat on the bench; a head on an upright line stands along x. */
export function arrowLines(line: Line, head: number): readonly Line[] {
  const way = along(line);
  if (way === null) return [];
  const side = Math.abs(way.z) > 0.9 ? { x: 1, y: 0, z: 0 } : cross(UP, way);
  const [, tip] = line;
  const back = plus(tip, way, -head);
  return [line, [plus(back, side, head / 2), tip], [plus(back, side, -head / 2), tip]];
}

/** A dimension line with a stroke across each end, and its witness lines. */
export function dimensionLines({ line, witnesses }: Dimension): readonly Line[] {
  const way = along(line);
  const side = way === null ? null : cross(UP, way);
  const strokes =
    side === null || way === null
      ? []
      : line.map((end): Line => [plus(end, plus(side, way, 0.5), -4), plus(end, plus(side, way, 0.5), 4)]);
  return [line, ...strokes, ...witnesses];
}

/** The twelve edges of a space. */
export function blockLines({ min, max }: KeepOut): readonly Line[] {
  const at = (x: number, y: number, z: number): Vec3 => ({ x, y, z });
  const floor = [
    at(min.x, min.y, min.z),
    at(max.x, min.y, min.z),
    at(max.x, max.y, min.z),
    at(min.x, max.y, min.z),
  ];
  const lid = floor.map((corner) => ({ ...corner, z: max.z }));
  const round = (corners: readonly Vec3[]): readonly Line[] =>
    corners.map((corner, index): Line => [corner, corners[(index + 1) % 4] ?? corner]);
  return [
    ...round(floor),
    ...round(lid),
    ...floor.map((corner, index): Line => [corner, lid[index] ?? corner]),
  ];
}
