import type { ReadEntity } from '../readers/types.ts';

type XY = readonly [number, number];

/** mm. Chords of an arc stay this near to it. */
const FLATNESS = 0.0005;

/** The points of a closed polyline with its arcs as chords, from bulges as the DXF reference defines them. */
export function flatten(vertices: ReadEntity['vertices']): readonly XY[] {
  return vertices.flatMap(([x, y, bulge], index): readonly XY[] => {
    const [nextX, nextY] = vertices[(index + 1) % vertices.length] ?? [x, y];
    if (bulge === 0) return [[x, y]];
    const angle = 4 * Math.atan(bulge);
    const chord = Math.hypot(nextX - x, nextY - y);
    const radius = chord / 2 / Math.sin(Math.abs(angle) / 2);
    const steps = Math.max(
      2,
      Math.ceil(Math.abs(angle) / (2 * Math.acos(1 - FLATNESS / Math.max(radius, 0.01)))),
    );
    // The centre lies to the left of the chord for an arc that turns counter-clockwise.
    const height = chord / 2 / Math.tan(angle / 2);
    const [centerX, centerY] = [
      (x + nextX) / 2 - (height * (nextY - y)) / chord,
      (y + nextY) / 2 + (height * (nextX - x)) / chord,
    ];
    const start = Math.atan2(y - centerY, x - centerX);
    return Array.from({ length: steps }, (_, step): XY => {
      const at = start + (angle * step) / steps;
      return [centerX + radius * Math.cos(at), centerY + radius * Math.sin(at)];
    });
  });
}

/** Where a horizontal line (y = at) or a vertical one (x = at) crosses a closed line of points, sorted. */
export function crossings(points: readonly XY[], line: 'x' | 'y', at: number): readonly number[] {
  const [fixed, free] = line === 'x' ? ([0, 1] as const) : ([1, 0] as const);
  const found: number[] = [];
  for (const [index, from] of points.entries()) {
    const to = points[(index + 1) % points.length] ?? from;
    const [a, b] = [from[fixed] - at, to[fixed] - at];
    if (a > 0 === b > 0) continue;
    found.push(from[free] + (a / (a - b)) * (to[free] - from[free]));
  }
  return found.toSorted((a, b) => a - b);
}

/** Pairs of sides of a closed line that cross or touch without being neighbours. */
export function selfCrossings(points: readonly XY[]): number {
  const sides = points.map((from, index) => [from, points[(index + 1) % points.length] ?? from] as const);
  const turn = (a: XY, b: XY, c: XY) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  let found = 0;
  for (const [i, [a, b]] of sides.entries()) {
    for (const [offset, [c, d]] of sides.slice(i + 2).entries()) {
      if (i === 0 && i + 2 + offset === sides.length - 1) continue;
      if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0]))
        continue;
      if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1]))
        continue;
      if (turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0) found += 1;
    }
  }
  return found;
}
