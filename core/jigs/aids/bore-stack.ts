import { circle } from '../../geometry/circle.ts';
import { ellipseArcs, ellipsePoint, ellipseSpan, type Ellipse } from '../../geometry/ellipse-arcs.ts';
import { translate } from '../../geometry/transform.ts';
import type { ClosedContour, Point } from '../../geometry/types.ts';
import { add, scale } from '../../geometry/vector.ts';
import { CONTOUR_ERROR, SAME_LENGTH, SHORTEST_SEGMENT } from '../../units/tolerances.ts';
import type { Bore } from '../types.ts';
import type { GuidePlace, GuideSetup } from './types.ts';

/**
 * A bore through a stack of layers. An upright wall cannot follow a slanted cylinder; the rule is: each layer's
 * hole is all that the cylinder passes on its way through that layer, so that the bit goes through at once and
 * is touched by the layer's edges exactly.
 *
 *     ____      ____   upper face: the ellipse there is the end of the hole on the side that the axis goes to
 *         |    /   |
 *         |   /    |   seen along the layer; the hole's walls are upright, the cylinder slants between them
 *     ____|__/     |_
 *                      lower face: the ellipse there is the end on the other side
 *
 * Between the two ellipses the hole has straight sides, which touch the cylinder all along. On the side that the
 * axis goes to the bit lies against upper edges, on the other against lower ones. Of n layers the first has no
 * edge below on the one side and the last none above on the other: n - 2 layers hold it on all sides.
 *
 * The holes of so many layers of this thickness (mm), lowest first: alike, each moved on by the lean. `error` is how
 * far their arcs leave the ellipses at most, mm.
 */
export function layerHoles(
  place: Pick<GuidePlace, 'at' | 'slope'>,
  diameter: number,
  layers: number,
  thickness: number,
): LayerHoles {
  const { contour, error } = lowestHole(place, diameter, thickness);
  return {
    contours: Array.from({ length: layers }, (_, layer) =>
      translate(contour, scale(place.slope, layer * thickness)),
    ),
    error,
  };
}

export interface LayerHoles {
  readonly contours: readonly ClosedContour[];
  readonly error: number;
}

function lowestHole(
  { at, slope }: Pick<GuidePlace, 'at' | 'slope'>,
  diameter: number,
  thickness: number,
): { readonly contour: ClosedContour; readonly error: number } {
  const radius = diameter / 2;
  const tangent = Math.hypot(slope.x, slope.y);
  const long = radius * Math.hypot(1, tangent);
  const axisAt = (height: number): Point => add(at, scale(slope, height));
  const middle = axisAt(thickness / 2);
  // A lean that no file could tell from none: a circle.
  if (long - radius < SAME_LENGTH && tangent * thickness < SHORTEST_SEGMENT) {
    return { contour: circle(middle, radius), error: 0 };
  }
  const along = scale(slope, 1 / tangent);
  const ellipse = (center: Point): Ellipse => ({ center, long, short: radius, along });
  if (tangent * thickness < SHORTEST_SEGMENT) {
    const { ring, error } = ellipseArcs(ellipse(middle), CONTOUR_ERROR);
    return { contour: ring, error };
  }
  const [low, high] = [ellipse(at), ellipse(axisAt(thickness))];
  const quarter = Math.PI / 2;
  const far = ellipseSpan(high, -quarter, quarter, CONTOUR_ERROR);
  const near = ellipseSpan(low, quarter, 3 * quarter, CONTOUR_ERROR);
  return {
    contour: {
      kind: 'ring',
      vertices: [
        ...far.vertices,
        { ...ellipsePoint(high, quarter), bulge: 0 },
        ...near.vertices,
        { ...ellipsePoint(low, 3 * quarter), bulge: 0 },
      ],
    },
    error: Math.max(far.error, near.error),
  };
}

const secantOf = ({ x, y }: Point): number => Math.hypot(1, x, y);

const leans = ({ x, y }: Point): boolean => Math.hypot(x, y) > SAME_LENGTH;

/** mm. A thinner stack bends under the drill; common practice, no source. */
const THINNEST = 10;

/**
 * How many layers guide every bore long enough, and are stiff. At least two: the lowest one makes room for glue
 * and dust.
 */
export const layersFor = ({ places, guided }: Pick<GuideSetup, 'places' | 'guided'>, thickness: number) =>
  Math.max(
    2,
    Math.ceil(THINNEST / thickness - 1e-9),
    ...places.map(({ slope }) => {
      const held = Math.ceil(guided / secantOf(slope) / thickness - 1e-9);
      return leans(slope) ? held + 2 : held;
    }),
  );

/** A bore and its errors, through the holes of a stack of layers of this thickness (mm). */
export function boreOf(
  place: GuidePlace,
  { bore: diameter, bit, play }: Pick<GuideSetup, 'bore' | 'bit' | 'play'>,
  { contours: { length: layers }, error }: LayerHoles,
  thickness: number,
): Bore {
  const { at, slope, depth } = place;
  const tangent = Math.hypot(slope.x, slope.y);
  const secant = secantOf(slope);
  const shift = scale(slope, thickness);
  const held = leans(slope) ? layers - 2 : layers;
  const guided = held * thickness * secant;
  return {
    at,
    slope,
    angle: (Math.atan(tangent) * 180) / Math.PI,
    diameter,
    bit,
    shift: { x: shift.x, y: shift.y },
    guided,
    step: (thickness * tangent) / secant,
    edgeGap: error,
    // Towards upright a leaning bit turns about the inner edges only: at the face it strays as far again for each
    // layer beyond them.
    play: (play / 2) * (layers / held),
    tilt: (Math.atan(play / guided) * 180) / Math.PI,
    depth,
    stop: layers * thickness * secant + depth,
  };
}

/** How far a bore reaches along x and y through a stack this high, mm. */
export function reachOf(
  { at, slope }: Pick<GuidePlace, 'at' | 'slope'>,
  diameter: number,
  height: number,
): { readonly min: Point; readonly max: Point } {
  const half = (along: number): number => (diameter / 2) * Math.hypot(1, along);
  const end = add(at, scale(slope, height));
  return {
    min: { x: Math.min(at.x, end.x) - half(slope.x), y: Math.min(at.y, end.y) - half(slope.y) },
    max: { x: Math.max(at.x, end.x) + half(slope.x), y: Math.max(at.y, end.y) + half(slope.y) },
  };
}
