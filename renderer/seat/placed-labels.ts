import { useLayoutEffect, type RefObject } from 'react';
import type { Vec3 } from '../../core/jigs/types.ts';
import { directionsOf } from '../../core/scene/directions.ts';
import { dot } from '../../core/scene/vec.ts';
import type { Room } from '../drawing/useRoom.ts';
import { pixelsPerMm, type Sight } from './look.ts';
import { clearOf, placeLabel, type Size, type Spot, type Taken } from './place-label.ts';
import type { SeatLabel } from './seat-labels.ts';

/** Pixels from a point to its label. A dimension's stands off, so that it hides nothing, with a line to it. */
const GAP = { dimension: 26, left: 8, tool: 6 } as const;

/** Pixels that the strokes at the ends of a dimension stand out. */
const STROKE = 10;

interface PlacedLabels {
  readonly labels: readonly SeatLabel[];
  /** Where they are in the page. */
  readonly layer: RefObject<HTMLDivElement | null>;
  readonly sight: Sight;
  /** Null until it is known. */
  readonly room: Room | null;
}

/** Puts the labels where their points are in the picture. */
export function usePlacedLabels({ labels, layer, sight, room }: PlacedLabels): void {
  useLayoutEffect(() => {
    if (room === null) return;
    const elementOf = ({ id }: SeatLabel) =>
      layer.current?.querySelector<HTMLElement>(`[data-label="${id}"]`) ?? null;
    const sized = labels.flatMap((label): SizedLabel[] => {
      const element = elementOf(label);
      return element === null ? [] : [{ label, width: element.offsetWidth, height: element.offsetHeight }];
    });
    for (const { label, x, y, leader } of placedLabels(sized, sight, room, fixedWords(layer.current))) {
      const element = elementOf(label);
      if (element === null) continue;
      element.style.transform = `translate(${Math.round(x)}px, ${Math.round(y)}px)`;
      element.style.visibility = 'visible';
      layer.current?.querySelector(`[data-leader="${label.id}"]`)?.setAttribute('d', leader);
    }
  }, [labels, layer, sight, room]);
}

/** A label and how large its words are, pixels. */
export interface SizedLabel extends Size {
  readonly label: SeatLabel;
}

/** Where a label stands, and the path of the line to what it is about. */
export interface PlacedLabel extends SizedLabel, Spot {
  readonly leader: string;
}

/** Places for labels beside their points, where they hide nothing that stands in the picture already. */
export function placedLabels(
  sized: readonly SizedLabel[],
  sight: Sight,
  room: Size,
  fixed: readonly Taken[],
): readonly PlacedLabel[] {
  const seen = (point: Vec3): Spot => inRoom(point, sight, room);
  const taken: Taken[] = [
    ...fixed,
    ...sized.flatMap(({ label: { spares } }) => (spares === undefined ? [] : [around(spares.map(seen))])),
  ];
  return sized.map(({ label, width, height }) => {
    const at = seen(label.at);
    const wanted = placeLabel(at, seen(label.away), { width, height }, room, GAP[label.kind]);
    const { x, y } = clearOf(wanted, { width, height }, taken, room);
    taken.push({ x, y, width, height });
    return { label, width, height, x, y, leader: `M${at.x} ${at.y}L${x + width / 2} ${y + height / 2}` };
  });
}

/** Room round points, for their strokes. */
function around(points: readonly Spot[]): Taken {
  const [x, y] = [Math.min(...points.map((one) => one.x)), Math.min(...points.map((one) => one.y))];
  const [right, bottom] = [Math.max(...points.map((one) => one.x)), Math.max(...points.map((one) => one.y))];
  return { x: x - STROKE, y: y - STROKE, width: right - x + 2 * STROKE, height: bottom - y + 2 * STROKE };
}

/** What always stands in the picture beside the labels. */
const fixedWords = (layer: HTMLElement | null): Taken[] =>
  [...(layer?.closest('.seat-frame')?.querySelectorAll<HTMLElement>('.seat-fixed') ?? [])].map((element) => ({
    x: element.offsetLeft,
    y: element.offsetTop,
    width: element.offsetWidth,
    height: element.offsetHeight,
  }));

/** Where a point of the scene is in the picture, pixels from its upper left corner. */
function inRoom(point: Vec3, sight: Sight, room: Size): Spot {
  const { right, up } = directionsOf(sight);
  const by = pixelsPerMm(room, sight);
  const off = (axis: Vec3): number => by * (dot(point, axis) - dot(sight.focus, axis));
  return { x: room.width / 2 + off(right), y: room.height / 2 - off(up) };
}
