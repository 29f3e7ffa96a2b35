import { groupBy } from '../collections/group-by.ts';
import { boundsOfPoints } from '../geometry/measure.ts';
import type { Point } from '../geometry/types.ts';
import type { Vec3 } from '../jigs/types.ts';
import { cutSolid } from './cut-solid.ts';
import { depthOrder, type Flat, type Placed } from './depth-order.ts';
import type { Directions } from './directions.ts';
import { keepLine, keepRing, type FlatLine } from './keep-part.ts';
import { lightOn } from './light.ts';
import { faceOn, inPicture, ringLines, seenSolid } from './line-faces.ts';
import { polylines } from './polylines.ts';
import type { Line, Material, Section, Solid } from './types.ts';
import { dot } from './vec.ts';

interface OfSolid {
  /** Its id. */
  readonly solid: string;
  /** It is of where the solid is cut. */
  readonly isCut: boolean;
}

/**
 * A face to fill, in mm of the picture's plane: outline and holes, even-odd, and how much light is on it (`lightOn`).
 */
export interface PaintedFace extends OfSolid {
  readonly kind: 'face';
  readonly material: Material;
  readonly light: number;
  readonly rings: readonly (readonly Point[])[];
}

/**
 * The borders of faces, as strokes of a pen, mm. They come after the faces that they border and those beside, so that
 * none covers half of one.
 */
export interface PaintedBorders extends OfSolid {
  readonly kind: 'borders';
  readonly strokes: readonly (readonly Point[])[];
}

/** A line, and what it is: an edge, one of a ghost, or what the picture's maker says it is. */
export interface PaintedLine<Mark extends string> {
  readonly kind: 'line';
  readonly mark: Mark;
  readonly ends: FlatLine;
}

export type Painted<Mark extends string> =
  | PaintedFace
  | PaintedBorders
  | PaintedLine<Mark | 'edge' | 'ghost'>;

export interface MarkedLine<Mark extends string> {
  readonly mark: Mark;
  readonly line: Line;
}

/** A plane across a scene; what lies beyond it, on its `side`, is taken away. */
export type Cut = Pick<Section, 'axis' | 'side' | 'at'>;

/** mm. A line that is seen shorter than this is seen end-on. */
const END_ON = 0.01;

/**
 * Solids and lines as flat faces and lines to be drawn one over another in the order given, so that a drawing without
 * depth shows what the view in space shows. A solid that is a ghost has its edges only. Solids are cut, lines are not.
 */
export function paintedScene<Mark extends string>(
  solids: readonly Solid[],
  lines: readonly MarkedLine<Mark>[],
  seen: Directions,
  cut: Cut | null = null,
): readonly Painted<Mark>[] {
  const parts = solids.map((solid) => ({ solid, ...seenSolid(solid, seen) }));
  const faces = parts
    .filter(({ solid }) => !solid.ghost)
    .flatMap(({ solid: { id, material }, faces }) =>
      faces.map(({ rings, bounds, nearness, normal, borders, body }): FlatFace => ({
        kind: 'face',
        solid: id,
        material,
        light: lightOn(normal),
        rings,
        bounds,
        nearness,
        body,
        borders: borders.map((line) => flat(line, seen)),
        isCut: false,
      })),
    );
  const drawn = parts.flatMap(({ solid, edges }) =>
    (solid.ghost ? edges : solid.lines).map(
      (line) => ({ line, mark: solid.ghost ? 'ghost' : 'edge' }) as const,
    ),
  );
  const own: readonly Drawn<Mark | 'edge' | 'ghost'>[] = [
    ...faces,
    ...drawn.flatMap((one) => flatLine<Mark | 'edge' | 'ghost'>(one, seen)),
  ];
  const left =
    cut === null
      ? own
      : [
          ...own.map((one) => keepPart(one, uncut(cut, one.nearness, seen))).filter(isSomething),
          ...solids.flatMap((solid) => cutFaces(solid, cut, seen)),
        ];
  const order = depthOrder(
    [...left, ...lines.flatMap((one) => flatLine<Mark | 'edge' | 'ghost'>(one, seen))],
    keepPart,
  );
  return withBorders(order);
}

/** Things in their order, and the borders of a face as late as may be: when something comes that stands over it. */
function withBorders<Mark extends string>(
  order: readonly Placed<Drawn<Mark>>[],
): readonly (PaintedFace | PaintedBorders | PaintedLine<Mark>)[] {
  const due = new Map<number, FlatFace[]>();
  const bordersAt = (place: number): readonly PaintedBorders[] =>
    [...groupBy(due.get(place) ?? [], ({ solid, isCut }) => `${solid} ${isCut}`).values()].flatMap((faces) =>
      faces.slice(0, 1).map(({ solid, isCut }): PaintedBorders => ({
        kind: 'borders',
        solid,
        isCut,
        strokes: polylines(faces.flatMap(({ borders }) => borders)),
      })),
    );
  return [
    ...order.flatMap(({ flat, until }, place) => {
      const borders = bordersAt(place);
      if (flat.kind === 'face' && flat.borders.length > 0) due.set(until, [...(due.get(until) ?? []), flat]);
      return [...borders, flat];
    }),
    ...bordersAt(order.length),
  ];
}

interface FlatFace extends PaintedFace, Flat {
  readonly rings: Flat['rings'];
  readonly borders: readonly FlatLine[];
}
type Drawn<Mark extends string> = FlatFace | (PaintedLine<Mark> & Flat);

const isSomething = ({ rings: [ring = []] }: Flat): boolean => ring.length > 1;

function keepPart<Mark extends string>(one: Drawn<Mark>, nearness: Flat['nearness']): Drawn<Mark> {
  if (one.kind === 'line') {
    const [ends] = keepLine(one.ends, nearness);
    const rings = ends === undefined ? [] : [ends];
    return { ...one, ends: ends ?? one.ends, rings, bounds: boundsOf(rings, one) };
  }
  const rings = one.rings.map((ring) => keepRing(ring, nearness)).filter((ring) => ring.length > 2);
  const borders = one.borders.flatMap((line) => keepLine(line, nearness));
  return { ...one, rings, borders, bounds: boundsOf(rings, one) };
}

const boundsOf = (rings: Flat['rings'], { bounds }: Flat): Flat['bounds'] =>
  rings.length === 0 ? bounds : boundsOfPoints(rings.flat());

/** mm on the side of a cut that stays, for what lies in a plane with a nearness. */
function uncut({ axis, side, at }: Cut, nearness: Flat['nearness'], { right, up, viewer }: Directions) {
  const along = (flat: number, near: number): number => -side * (flat + near * viewer[axis]);
  return {
    x: along(right[axis], nearness.x),
    y: along(up[axis], nearness.y),
    at: side * at + along(0, nearness.at),
  };
}

/** The faces where a solid is cut, if one sees them. */
function cutFaces(solid: Solid, { axis, side, at }: Cut, seen: Directions): readonly FlatFace[] {
  const normal: Vec3 = { x: 0, y: 0, z: 0, [axis]: side };
  return cutSolid(solid, axis, at).flatMap(({ outline, holes }) => {
    const rings = [outline, ...holes];
    return faceOn(rings, normal, seen).map((face): FlatFace => ({
      kind: 'face',
      solid: solid.id,
      material: solid.material,
      light: 1,
      ...face,
      body: null,
      borders: rings.flatMap(ringLines).map((line) => flat(line, seen)),
      isCut: true,
    }));
  });
}

const flat = ([a, b]: Line, seen: Directions): FlatLine => [inPicture(a, seen), inPicture(b, seen)];

/** A line as a thing to draw; none where it is seen end-on. */
function flatLine<Mark extends string>(
  { mark, line }: MarkedLine<Mark>,
  seen: Directions,
): readonly (PaintedLine<Mark> & Flat)[] {
  const ends = flat(line, seen);
  const [a, b] = ends;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy);
  if (length < END_ON) return [];
  const [near, far] = [dot(line[0], seen.viewer), dot(line[1], seen.viewer)];
  const rise = (far - near) / length ** 2;
  const [x, y] = [dx * rise, dy * rise];
  const nearness = { x, y, at: near - x * a.x - y * a.y };
  return [{ kind: 'line', mark, ends, rings: [ends], bounds: boundsOfPoints(ends), nearness, body: null }];
}
