import { useState } from 'react';
import type { Point } from '../../core/geometry/types.ts';
import { distance } from '../../core/geometry/vector.ts';
import { measureBetween, type Measured } from '../../core/parts/measure-between.ts';
import type { SnapPoint } from '../../core/parts/snap-points.ts';
import type { Drawing } from '../drawing/useDrawing.ts';

/** Pixels within which the pointer catches a point. */
const REACH = 24;

export interface Measure {
  readonly points: readonly SnapPoint[];
  /** Index of the point that the keys have come to. */
  readonly current: number | null;
  /** The point under the pointer. */
  readonly hovered: SnapPoint | null;
  /** The picked points, two at most. */
  readonly picked: readonly SnapPoint[];
  /** Between the two, once both are picked. */
  readonly measured: Measured | null;
  readonly step: (by: 1 | -1) => void;
  readonly pickCurrent: () => void;
  readonly pickNear: (pixel: Point) => void;
  readonly hover: (pixel: Point | null) => void;
  readonly clear: () => void;
  /** Whether a key meant anything here. */
  readonly key: (key: string) => boolean;
}

/** Picking two points of a part, by pointer or by keys, and what lies between them. */
export function useMeasure(points: readonly SnapPoint[], drawing: Drawing): Measure {
  const [current, setCurrent] = useState<number | null>(null);
  const [hovered, setHovered] = useState<SnapPoint | null>(null);
  const [picked, setPicked] = useState<readonly SnapPoint[]>([]);
  const [first, second] = picked;

  const pick = (point: SnapPoint): void => setPicked(picked.length === 1 ? [...picked, point] : [point]);
  const near = (pixel: Point): SnapPoint | null => {
    const { projection } = drawing;
    if (projection === null) return null;
    const [best] = points
      .map((point) => ({ point, away: distance(projection.toScreen(point), pixel) }))
      .toSorted((a, b) => a.away - b.away);
    return best !== undefined && best.away <= REACH ? best.point : null;
  };
  const step = (by: 1 | -1): void => {
    if (points.length === 0) return;
    const start = by === 1 ? -1 : 0;
    const next = ((current ?? start) + by + points.length) % points.length;
    setCurrent(next);
    const point = points[next];
    // Enlarged, the picture follows; as a whole, all points are in it.
    if (point !== undefined && drawing.zoom > 1) drawing.lookAt(point, drawing.zoom);
  };
  const pickCurrent = (): void => {
    const point = current === null ? undefined : points[current];
    if (point !== undefined) pick(point);
  };
  const clear = (): void => setPicked([]);
  const keys: Readonly<Record<string, () => void>> = {
    n: () => step(1),
    p: () => step(-1),
    Enter: pickCurrent,
    Escape: clear,
  };
  return {
    points,
    current,
    hovered,
    picked,
    measured: first !== undefined && second !== undefined ? measureBetween(first, second) : null,
    step,
    pickCurrent,
    pickNear: (pixel) => {
      const point = near(pixel);
      if (point !== null) pick(point);
    },
    hover: (pixel) => setHovered(pixel === null ? null : near(pixel)),
    clear,
    key: (key) => {
      const act = keys[key.length === 1 ? key.toLowerCase() : key];
      act?.();
      return act !== undefined;
    },
  };
}
