import { bounds } from '../../../core/geometry/measure.ts';
import type { BuildContext, Jig, Piece } from '../../../core/jigs/types.ts';
import { makePart } from '../../../core/parts/make-part.ts';
import { STROKE_FONT } from '../../../shared/stroke-font.ts';

export const pieceOf = (jig: Jig, name: string): Piece => {
  const found = jig.pieces.find((piece) => piece.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

/** mm. Less wood between a letter and an edge would break out (common practice, no source). */
const WALL = 0.9;

/** What is wrong with a jig's parts: findings of their making, and text that is not clear of outline and holes. */
export const partFaults = (jig: Jig, { machine }: BuildContext): readonly string[] =>
  jig.pieces.flatMap((piece) => {
    const { value, findings } = makePart(jig, piece, machine, STROKE_FONT);
    const outline = bounds(piece.outline);
    const holes = piece.holes.map(({ contour }) => bounds(contour));
    const strokes = value.features
      .filter(({ operation }) => operation === 'engrave')
      .map(({ contour }) => bounds(contour));
    const near = strokes.flatMap(({ min, max }) => [
      Math.min(min.x - outline.min.x, outline.max.x - max.x, min.y - outline.min.y, outline.max.y - max.y),
      ...holes.map((hole) =>
        Math.max(min.x - hole.max.x, hole.min.x - max.x, min.y - hole.max.y, hole.min.y - max.y),
      ),
    ]);
    return [
      ...findings.map(({ message }) => message),
      ...(strokes.length === 0 ? [`${piece.name}: no text`] : []),
      ...near.filter((room) => !(room > WALL)).map((room) => `${piece.name}: ${room} mm beside a letter`),
    ];
  });
