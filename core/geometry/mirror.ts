import { reverseRing } from './orient.ts';
import type { Contour, Vertex } from './types.ts';

/**
 * A contour mirrored left to right in the vertical line x = `axisX` (mm): the one mirror of the whole program.
 *
 *     ◣ | ◢
 *
 * A ring is walked the other way afterwards, so that counter-clockwise stays counter-clockwise; it starts at
 * the same corner. An open path keeps its order, because a pen starts where it did. Twice is the identity.
 */
export function mirrorX<C extends Contour>(contour: C, axisX: number): C;
export function mirrorX(contour: Contour, axisX: number): Contour {
  const across = (x: number): number => 2 * axisX - x;
  if (contour.kind === 'circle') {
    return { ...contour, center: { x: across(contour.center.x), y: contour.center.y } };
  }
  const vertices = contour.vertices.map(({ x, y, bulge }): Vertex => ({
    x: across(x),
    y,
    bulge: -bulge || 0,
  }));
  return contour.kind === 'ring' ? reverseRing({ kind: 'ring', vertices }) : { kind: 'path', vertices };
}
