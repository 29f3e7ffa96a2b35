import type { Point, Vertex } from '../geometry/types.ts';
import { arcExtremes } from './arc-extremes.ts';

/** A path as the checker reads it, in page coordinates (y down). */
export interface SvgOutline {
  readonly closed: boolean;
  readonly vertices: readonly Vertex[];
  readonly faults: readonly string[];
}

const NUMBER = '-?(?:0|[1-9]\\d*)\\.\\d{6}';
const COMMAND = new RegExp(
  `^(?:([ML]) (${NUMBER}) (${NUMBER})|A (${NUMBER}) (${NUMBER}) 0 0 ([01]) (${NUMBER}) (${NUMBER})|(Z))$`,
);

/** Reads `M`, `L`, `A` and `Z` with plain decimals of 6 places; anything else is a fault. */
export function readPath(data: string): SvgOutline {
  const faults: string[] = [];
  const vertices: Vertex[] = [];
  let closed = false;
  for (const [index, text] of data.split(/ (?=[A-Za-z])/).entries()) {
    const match = COMMAND.exec(text);
    const last = vertices.at(-1);
    if (match === null || closed || (match[1] === 'M') !== (index === 0)) {
      faults.push(`“${text}” is not allowed at command ${index + 1}`);
    } else if (match[9] === 'Z') {
      closed = true;
    } else if (match[1] !== undefined) {
      vertices.push({ x: Number(match[2]), y: Number(match[3]), bulge: 0 });
    } else if (last !== undefined) {
      const end = { x: Number(match[7]), y: Number(match[8]), bulge: 0 };
      if (match[4] !== match[5]) faults.push(`“${text}” is no circle`);
      vertices[vertices.length - 1] = {
        ...last,
        bulge: bulgeOf(last, end, Number(match[4]), match[6] === '1', faults),
      };
      vertices.push(end);
    }
  }
  if (vertices.length < 2) faults.push('the path has no side');
  return { closed, vertices, faults };
}

/** sin(86°): arcs nearer to a half circle, or with ends too far apart for their radius, move between readers. */
const LARGEST_SHARE = 0.9976;

/** The smaller of the two arcs: 0 is what the second flag says. With y down, sweep 1 is what DXF calls positive. */
function bulgeOf(from: Point, to: Point, radius: number, sweep: boolean, faults: string[]): number {
  const half = Math.hypot(to.x - from.x, to.y - from.y) / 2;
  if (!(radius > 0) || half === 0) {
    faults.push(`an arc of the radius ${radius} over ${2 * half} mm`);
    return 0;
  }
  if (half > radius * LARGEST_SHARE)
    faults.push(`an arc of the radius ${radius} over ${2 * half} mm, half a circle`);
  const r = Math.max(radius, half);
  const bulge = (r - Math.sqrt(r * r - half * half)) / half;
  return sweep ? bulge : -bulge;
}

/** All points at which an outline can be outermost. */
export const outermostOf = ({ vertices }: SvgOutline): readonly Point[] =>
  vertices.flatMap((vertex, index) => {
    const next = vertices[index + 1];
    return next === undefined ? [vertex] : [vertex, ...arcExtremes(vertex, next)];
  });
