import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Vec3 } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import { directionsOf } from './directions.ts';
import type { Line, StandardView } from './types.ts';
import { add, dot, scale } from './vec.ts';

const degrees = ({ x, y }: Vec3): number => (Math.atan2(y, x) * 180) / Math.PI;

/** How much more is seen than must be, and mm that are always seen, so that the surroundings tell where it is. */
const ROOM = 1.12;
const LEAST = { across: 50, up: 32 } as const;

/** The arrow runs along x; seen more than this along it, it is a dot. */
const END_ON = 0.9;

/**
 * Where one looks at a seat from, for the first edge in use. From the side the edge is at the left of the
 * picture and the box at the right; from above the picture is the back view, the cabinet's left at the right.
 *
 * @param seen what must be in the picture
 * @param arrow seen too, but where one looks along it
 */
export function standardViews(edge: Edge, seen: readonly Vec3[], arrow: Line): readonly StandardView[] {
  const { u, v } = edgeFrame(edge, 0, 0);
  const outside = degrees({ x: -v.x, y: -v.y, z: 0 });
  const ways = [
    { id: 'three-quarter', title: 'Three-quarter', azimuth: outside + 32, elevation: 34 },
    { id: 'above', title: 'From above', azimuth: -90, elevation: 90 },
    { id: 'edge', title: 'Edge on', azimuth: outside, elevation: 0 },
    { id: 'side', title: 'From the side', azimuth: degrees(u), elevation: 0 },
  ] as const;
  return ways.map((way) => {
    const { right, up, viewer } = directionsOf(way);
    const points = Math.abs(viewer.x) > END_ON ? seen : [...seen, ...arrow];
    const span = (axis: Vec3) => {
      const along = points.map((point) => dot(point, axis));
      const [from, to] = [Math.min(...along), Math.max(...along)];
      return { middle: (from + to) / 2, half: (ROOM * (to - from)) / 2 };
    };
    const [across, upright, deep] = [span(right), span(up), span(viewer)];
    return {
      ...way,
      focus: [scale(right, across.middle), scale(up, upright.middle), scale(viewer, deep.middle)].reduce(add),
      half: { across: Math.max(LEAST.across, across.half), up: Math.max(LEAST.up, upright.half) },
    };
  });
}
