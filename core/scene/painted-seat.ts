import type { Point } from '../geometry/types.ts';
import type { Vec3 } from '../jigs/types.ts';
import type { Directions } from './directions.ts';
import { arrowLines, blockLines, dimensionLines, HEAD } from './glyph-lines.ts';
import { keepRingInSpace, type FlatLine } from './keep-part.ts';
import { inPicture, ringLines } from './line-faces.ts';
import { moveOf } from './offset-of.ts';
import { paintedScene, type Cut, type MarkedLine, type Painted } from './painted-scene.ts';
import { showsDimensions, shownContacts, shownOffset, shownSolids, type Showing } from './shown-seat.ts';
import type { Line, SceneContact, SeatScene, Solid } from './types.ts';
import { add } from './vec.ts';

/** What stands among the solids, hidden by what is before it. */
export type SeatMark = 'arrow' | 'left edge' | 'contact' | 'contact line';

/** What is drawn over all of them. */
export type OverMark = 'contact behind' | 'dimension' | 'zone' | 'tool';

/** A seat to be drawn one thing over another, mm of the picture's plane. */
export interface PaintedSeat {
  readonly items: readonly Painted<SeatMark>[];
  /** Faces that touch, to be hatched over that: outline and holes, even-odd. */
  readonly touching: readonly (readonly (readonly Point[])[])[];
  /** Lines over all. */
  readonly over: readonly { readonly mark: OverMark; readonly ends: FlatLine }[];
}

/**
 * A seat as a drawing without depth, from the same solids as the view in space: solids, cut faces, faces that touch,
 * dimensions, the cabinet's left.
 */
export function paintedSeat(scene: SeatScene, showing: Showing, seen: Directions): PaintedSeat {
  const { step, share, cutAt, zones } = showing;
  const solids = shownSolids(scene, showing).map((solid) => moved(solid, shownOffset(solid, showing)));
  const cut = cutAt === null ? null : { ...scene.section, at: cutAt };
  const contacts = shownContacts(scene, showing)
    .map(({ contact, solid }) => movedShape(contact.shape, shownOffset(solid, showing)))
    .flatMap((shape) => (cut === null ? [shape] : uncut(shape, cut)));
  const { arrow, edge } = scene.cabinetLeft;
  const leftEdge = movedLine(edge, moveOf('front', step, share));
  const marked: readonly MarkedLine<SeatMark>[] = [
    ...contacts.flatMap((shape) =>
      rimOf(shape).map(
        (line) => ({ mark: shape.kind === 'line' ? 'contact line' : 'contact', line }) as const,
      ),
    ),
    ...arrowLines(arrow.line, HEAD.left).map((line) => ({ mark: 'arrow', line }) as const),
    { mark: 'left edge', line: leftEdge },
  ];
  const over: readonly MarkedLine<OverMark>[] = [
    ...contacts.flatMap(rimOf).map((line) => ({ mark: 'contact behind', line }) as const),
    ...(showsDimensions(showing) ? scene.dimensions : [])
      .flatMap(dimensionLines)
      .map((line) => ({ mark: 'dimension', line }) as const),
    ...(zones ? scene.keepOuts : []).flatMap(blockLines).map((line) => ({ mark: 'zone', line }) as const),
    ...(step?.tools ?? [])
      .flatMap(({ line }) => arrowLines(line, HEAD.tool))
      .map((line) => ({ mark: 'tool', line }) as const),
  ];
  return {
    items: paintedScene(solids, marked, seen, cut),
    touching: contacts.flatMap((shape) =>
      shape.kind === 'line'
        ? []
        : [[shape.outline, ...shape.holes].map((ring) => ring.map((point) => inPicture(point, seen)))],
    ),
    over: over.map(({ mark, line: [a, b] }) => ({ mark, ends: [inPicture(a, seen), inPicture(b, seen)] })),
  };
}

const movedLine = ([a, b]: Line, by: Vec3): Line => [add(a, by), add(b, by)];

const moved = (solid: Solid, by: Vec3): Solid => ({
  ...solid,
  pose: { ...solid.pose, origin: add(solid.pose.origin, by) },
  lines: solid.lines.map((line) => movedLine(line, by)),
});

type Shape = SceneContact['shape'];

const movedShape = (shape: Shape, by: Vec3): Shape =>
  shape.kind === 'line'
    ? { ...shape, line: movedLine(shape.line, by) }
    : {
        ...shape,
        outline: shape.outline.map((point) => add(point, by)),
        holes: shape.holes.map((hole) => hole.map((point) => add(point, by))),
      };

/** What a cut leaves of a shape: one, or none. */
function uncut(shape: Shape, { axis, side, at }: Cut): readonly Shape[] {
  const left = (ring: readonly Vec3[]) => keepRingInSpace(ring, (point) => side * (at - point[axis]));
  if (shape.kind === 'line') {
    const [a, b] = left(shape.line);
    return a === undefined || b === undefined ? [] : [{ ...shape, line: [a, b] }];
  }
  const outline = left(shape.outline);
  const holes = shape.holes.map(left).filter((hole) => hole.length > 0);
  return outline.length === 0 ? [] : [{ ...shape, outline, holes }];
}

const rimOf = (shape: Shape): readonly Line[] =>
  shape.kind === 'line' ? [shape.line] : [shape.outline, ...shape.holes].flatMap(ringLines);
