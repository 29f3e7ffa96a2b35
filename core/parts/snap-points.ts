import { segmentsOf, pointAt } from '../geometry/segments.ts';
import type { Contour, Point } from '../geometry/types.ts';
import { polar } from '../geometry/vector.ts';
import { SAME_OVERHANG } from '../units/tolerances.ts';
import type { Feature } from './types.ts';

/** What a point of a part is: a corner, the middle of a side, the centre of an arc, a circle's outermost point. */
export type SnapKind = 'corner' | 'middle' | 'center' | 'quarter';

/** A point of a part that a measurement may start or end at, mm. */
export interface SnapPoint extends Point {
  readonly kind: SnapKind;
}

/**
 * The points of a part between which people measure, contour by contour, each place once: corners before
 * middles before centres. Engraved text has none.
 */
export function snapPoints(features: readonly Feature[]): readonly SnapPoint[] {
  const places = new Map<string, SnapPoint>();
  for (const { operation, contour } of features) {
    if (operation === 'engrave') continue;
    for (const point of pointsOf(contour)) {
      const place = `${Math.round(point.x / SAME_OVERHANG)} ${Math.round(point.y / SAME_OVERHANG)}`;
      if (!places.has(place)) places.set(place, point);
    }
  }
  return [...places.values()];
}

function pointsOf(contour: Contour): readonly SnapPoint[] {
  if (contour.kind === 'circle') {
    const { center, radius } = contour;
    const quarters = [0, 1, 2, 3].map((quarter) => polar(center, radius, (quarter * Math.PI) / 2));
    return [
      { x: center.x, y: center.y, kind: 'center' },
      ...quarters.map(({ x, y }): SnapPoint => ({ x, y, kind: 'quarter' })),
    ];
  }
  const segments = segmentsOf(contour);
  return [
    ...contour.vertices.map(({ x, y }): SnapPoint => ({ x, y, kind: 'corner' })),
    ...segments.map((segment): SnapPoint => ({ ...pointAt(segment, 0.5), kind: 'middle' })),
    ...segments.flatMap((segment): readonly SnapPoint[] =>
      segment.kind === 'arc' ? [{ x: segment.center.x, y: segment.center.y, kind: 'center' }] : [],
    ),
  ];
}
