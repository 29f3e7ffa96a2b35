import type { Vec3 } from '../jigs/types.ts';
import { cross, inPose } from '../jigs/vec3.ts';
import { boundsOfPoints, type Bounds } from '../geometry/measure.ts';
import type { Point } from '../geometry/types.ts';
import type { Directions } from './directions.ts';
import type { Group, Layer, Line, Solid } from './types.ts';
import { add, dot, scale } from './vec.ts';

/** A flat face of a solid as it is seen: rings in the picture's plane, and how near it is. Lengths in mm. */
export interface Face {
  readonly solid: string;
  readonly group: Group;
  /** It is a side of a hole. */
  readonly inHole: boolean;
  /** Outline and holes, in the plane of the picture. */
  readonly rings: readonly (readonly Point[])[];
  readonly bounds: Bounds;
  /** Towards the viewer at a point of the picture: `nearness.x * x + nearness.y * y + nearness.at`. */
  readonly nearness: { readonly x: number; readonly y: number; readonly at: number };
}

export interface SeenSolid {
  /** Those that face the viewer. */
  readonly faces: readonly Face[];
  /** The lines that may be drawn, hidden or not. */
  readonly edges: readonly Line[];
}

/** Cosine. Neighbouring sides that turn less than this are taken for a curve, and the line between them is left out. */
const SMOOTH = Math.cos((25 * Math.PI) / 180);

/** Less than this towards the viewer is edge-on. */
const EDGE_ON = 1e-6;

/** The faces of a solid that face the viewer, and their edges. */
export function seenSolid(solid: Solid, seen: Directions): SeenSolid {
  const parts = solid.layers.map((layer) => layerFaces(solid, layer, seen));
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
  seen: Directions,
): SeenSolid {
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
  const sides = walls.map(sidesOf);
  const facing = (side: Side | undefined) => side !== undefined && dot(side.normal, seen.viewer) > EDGE_ON;
  return {
    faces: [
      ...caps.flatMap(({ rings, normal }) => faceOf(solid, rings, normal, seen, false)),
      ...sides.flatMap((wall, index) =>
        wall.flatMap((side) =>
          facing(side) ? faceOf(solid, [side.ring], side.normal, seen, index > 0) : [],
        ),
      ),
    ],
    edges: [
      ...caps.flatMap(({ rings }) => rings.flatMap(ringLines)),
      ...sides.flatMap((ring) =>
        ring.flatMap((side, index): readonly Line[] => {
          const before = ring.at(index - 1);
          const rims = facing(side) ? [side.lower, side.upper] : [];
          const corner = before === undefined || dot(before.normal, side.normal) < SMOOTH;
          const drawn = corner ? facing(side) || facing(before) : facing(side) !== facing(before);
          return drawn ? [...rims, side.start] : rims;
        }),
      ),
    ],
  };
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
  solid: Solid,
  rings: readonly (readonly Vec3[])[],
  normal: Vec3,
  seen: Directions,
  inHole: boolean,
): readonly Face[] {
  const on = rings[0]?.[0];
  if (on === undefined) return [];
  const flat = rings.map((ring) => ring.map((point) => inPicture(point, seen)));
  const [x, y, z] = [dot(normal, seen.right), dot(normal, seen.up), dot(normal, seen.viewer)];
  return [
    {
      solid: solid.id,
      group: solid.group,
      inHole,
      rings: flat,
      bounds: boundsOfPoints(flat.flat()),
      nearness: { x: -x / z, y: -y / z, at: dot(normal, on) / z },
    },
  ];
}

const minus = (a: Vec3, b: Vec3): Vec3 => add(a, scale(b, -1));

const ringLines = (ring: readonly Vec3[]): readonly Line[] =>
  ring.flatMap((end, index): readonly Line[] => {
    const start = ring.at(index - 1);
    return start === undefined ? [] : [[start, end]];
  });
