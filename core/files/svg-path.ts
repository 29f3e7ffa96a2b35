import type { PathContour, Point, RingContour, Vertex } from '../geometry/types.ts';
import { distance } from '../geometry/vector.ts';
import { COORDINATE_DECIMALS } from '../units/tolerances.ts';
import { coordinate } from './numbers.ts';

/**
 * tan(170° / 4): arcs beyond 170° are drawn as two halves. A reader finds the centre of an arc from its ends and
 * radius; near a half circle a last digit too many moves it by 0.1 mm, as measured at r = 300 in a reader that
 * keeps 32-bit numbers.
 */
const LARGEST_BULGE = Math.tan((170 / 4) * (Math.PI / 180));

/** Page coordinates of a point of the drawing. */
export type ToPage = (point: Point) => Point;

/** Where a drawing's upper left corner comes to lie on the page; y of the page points down. */
export const pageOf =
  (left: number, top: number): ToPage =>
  ({ x, y }) => ({ x: x - left, y: top - y });

const asWritten = ({ x, y }: Point): Point => ({
  x: Number(x.toFixed(COORDINATE_DECIMALS)),
  y: Number(y.toFixed(COORDINATE_DECIMALS)),
});

/** The `d` of a path: M, L and A in page coordinates, Z where the outline is closed. */
export function pathData(contour: RingContour | PathContour, toPage: ToPage): string {
  const { vertices, kind } = contour;
  const [first] = vertices;
  if (first === undefined) return '';
  const commands = vertices.flatMap((vertex, index) => {
    const next = vertices[index + 1] ?? (kind === 'ring' ? first : undefined);
    if (next === undefined) return [];
    // Z draws the last straight side of a ring by itself.
    if (index === vertices.length - 1 && vertex.bulge === 0) return [];
    return side(vertex, next, toPage);
  });
  return [`M ${pair(toPage(first))}`, ...commands, ...(kind === 'ring' ? ['Z'] : [])].join(' ');
}

const pair = ({ x, y }: Point): string => `${coordinate(x)} ${coordinate(y)}`;

function side(vertex: Vertex, next: Point, toPage: ToPage): readonly string[] {
  const { x, y, bulge } = vertex;
  if (bulge === 0) return [`L ${pair(toPage(next))}`];
  if (Math.abs(bulge) <= LARGEST_BULGE) return [arc(bulge, toPage(vertex), toPage(next))];
  // The arc's middle lies off its chord's middle by the bulge times half the chord, to the right.
  const middle = {
    x: (x + next.x) / 2 + ((next.y - y) / 2) * bulge,
    y: (y + next.y) / 2 - ((next.x - x) / 2) * bulge,
  };
  const half = bulge / (1 + Math.sqrt(1 + bulge * bulge));
  return [arc(half, toPage(vertex), toPage(middle)), arc(half, toPage(middle), toPage(next))];
}

function arc(bulge: number, from: Point, to: Point): string {
  // Of the ends as written, so that ends and radius fit each other.
  const chord = distance(asWritten(from), asWritten(to));
  const radius = coordinate((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)));
  // Counter-clockwise stays so to the eye when y is turned; SVG calls it sweep 0.
  return `A ${radius} ${radius} 0 0 ${bulge > 0 ? 0 : 1} ${pair(to)}`;
}
