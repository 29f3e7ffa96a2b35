import type { Vec3 } from '../jigs/types.ts';
import { cross, inPose } from '../jigs/vec3.ts';
import { boundsOfPoints } from '../geometry/measure.ts';
import type { Point } from '../geometry/types.ts';
import type { Flat } from './depth-order.ts';
import type { Directions } from './directions.ts';
import type { Layer, Line, Solid } from './types.ts';
import { add, dot, scale } from './vec.ts';

/** A flat face of a solid as it is seen. */
export interface Face extends Flat {
  /** Out of the wood, length 1. */
  readonly normal: Vec3;
  /** Those of its borders that are drawn: where it turns little into the next, none is. */
  readonly borders: readonly Line[];
}

export interface SeenSolid {
  /** Those that face the viewer. */
  readonly faces: readonly Face[];
  /** The lines that may be drawn, hidden or not. */
  readonly edges: readonly Line[];
}

/** Cosine. Neighbouring sides that turn less than this are taken for a curve, and the line between them is left out. */
const SMOOTH = Math.cos((25 * Math.PI) / 180);

/** mm². A corner that turns less than this is on a straight line. */
const STRAIGHT = 1e-6;

/** Less than this towards the viewer is edge-on. */
const EDGE_ON = 1e-6;

/** The faces of a solid that face the viewer, and their edges. */
export function seenSolid(solid: Solid, seen: Directions): SeenSolid {
  const parts = solid.layers.map((layer, index) => layerFaces(solid, layer, index, seen));
  return {
    faces: parts.flatMap(({ faces }) => faces),
    edges: [...parts.flatMap(({ edges }) => edges), ...solid.lines],
  };
}

/** A point of the scene in the plane of the picture. */
export const inPicture = (point: Vec3, { right, up }: Directions): Point => ({
  x: dot(point, right),
  y: dot(point, up),
});

function layerFaces(
  solid: Solid,
  { outline, top = outline, holes, from, to }: Layer,
  index: number,
  seen: Directions,
): SeenSolid {
  const body = holes.length === 0 && isConvex(outline) && isConvex(top) ? `${solid.id} ${index}` : null;
  const at = (points: readonly Point[], height: number) =>
    points.map((point) => inPose(solid.pose, point, height));
  const walls = [
    { lower: at(outline, from), upper: at(top, to) },
    ...holes.map((hole) => ({ lower: at(hole, from), upper: at(hole, to) })),
  ];
  const up = cross(solid.pose.u, solid.pose.v);
  const caps = [
    { rings: walls.map(({ upper }) => upper), normal: up },
    { rings: walls.map(({ lower }) => lower), normal: scale(up, -1) },
  ].filter(({ normal }) => dot(normal, seen.viewer) > EDGE_ON);
  const sides = walls.map((wall) => withStarts(sidesOf(wall), seen));
  return {
    faces: [
      ...caps.flatMap(({ rings, normal }) =>
        faceOf({ rings, normal, borders: rings.flatMap(ringLines), body }, seen),
      ),
      ...sides.flatMap((wall) =>
        wall.flatMap(({ side, facing, startDrawn }, place) => {
          if (!facing) return [];
          const next = wall[(place + 1) % wall.length];
          const borders = [
            side.lower,
            side.upper,
            ...(startDrawn ? [side.start] : []),
            ...(next?.startDrawn === true ? [next.side.start] : []),
          ];
          return faceOf({ rings: [side.ring], normal: side.normal, borders, body }, seen);
        }),
      ),
    ],
    edges: [
      ...caps.flatMap(({ rings }) => rings.flatMap(ringLines)),
      ...sides.flatMap((wall) =>
        wall.flatMap(({ side, facing, startDrawn }): readonly Line[] => [
          ...(facing ? [side.lower, side.upper] : []),
          ...(startDrawn ? [side.start] : []),
        ]),
      ),
    ],
  };
}

/** Whether a counter-clockwise ring bends inwards nowhere. */
const isConvex = (ring: readonly Point[]): boolean =>
  ring.every((b, index) => {
    const [a, c] = [ring.at(index - 1) ?? b, ring[(index + 1) % ring.length] ?? b];
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) > -STRAIGHT;
  });

interface SeenSide {
  readonly side: Side;
  /** It faces the viewer. */
  readonly facing: boolean;
  /** The line up its first corner is drawn: a corner of the wood, or the rim of what is seen of it. */
  readonly startDrawn: boolean;
}

function withStarts(sides: readonly Side[], seen: Directions): readonly SeenSide[] {
  const facing = sides.map(({ normal }) => dot(normal, seen.viewer) > EDGE_ON);
  return sides.map((side, index): SeenSide => {
    const [faces, before] = [facing[index] === true, facing.at(index - 1) === true];
    const corner = dot(sides.at(index - 1)?.normal ?? side.normal, side.normal) < SMOOTH;
    return { side, facing: faces, startDrawn: corner ? faces || before : faces !== before };
  });
}

interface Side {
  readonly ring: readonly Vec3[];
  readonly normal: Vec3;
  readonly lower: Line;
  readonly upper: Line;
  /** The line up its first corner. */
  readonly start: Line;
}

/** The sides between a lower and an upper ring of as many corners, their normals out of the wood, length 1. */
const sidesOf = ({
  lower,
  upper,
}: {
  readonly lower: readonly Vec3[];
  readonly upper: readonly Vec3[];
}): readonly Side[] =>
  lower.flatMap((a, index): readonly Side[] => {
    const next = (index + 1) % lower.length;
    const [b, c, d] = [lower[next], upper[next], upper[index]];
    if (b === undefined || c === undefined || d === undefined) return [];
    const normal = cross(minus(b, a), minus(d, a));
    const length = Math.sqrt(dot(normal, normal));
    if (length === 0) return [];
    return [
      { ring: [a, b, c, d], normal: scale(normal, 1 / length), lower: [a, b], upper: [d, c], start: [a, d] },
    ];
  });

function faceOf(
  {
    rings,
    normal,
    borders,
    body,
  }: { readonly rings: readonly (readonly Vec3[])[] } & Pick<Face, 'normal' | 'borders' | 'body'>,
  seen: Directions,
): readonly Face[] {
  return faceOn(rings, normal, seen).map((flat) => ({
    normal,
    borders,
    body,
    ...flat,
  }));
}

/** A face in space as it is seen, its normal of length 1; none where it does not face the viewer. */
export function faceOn(
  rings: readonly (readonly Vec3[])[],
  normal: Vec3,
  seen: Directions,
): readonly Pick<Flat, 'rings' | 'bounds' | 'nearness'>[] {
  const [x, y, z] = [dot(normal, seen.right), dot(normal, seen.up), dot(normal, seen.viewer)];
  const on = rings[0]?.[0];
  if (on === undefined || z <= EDGE_ON) return [];
  const flat = rings.map((ring) => ring.map((point) => inPicture(point, seen)));
  return [
    {
      rings: flat,
      bounds: boundsOfPoints(flat.flat()),
      nearness: { x: -x / z, y: -y / z, at: dot(normal, on) / z },
    },
  ];
}

const minus = (a: Vec3, b: Vec3): Vec3 => add(a, scale(b, -1));

/** The lines of a closed line through corners. */
export const ringLines = (ring: readonly Vec3[]): readonly Line[] =>
  ring.flatMap((end, index): readonly Line[] => {
    const start = ring.at(index - 1);
    return start === undefined ? [] : [[start, end]];
  });
