import { useState, type RefObject } from 'react';
import type { Point } from '../../core/geometry/types.ts';
import {
  projectionOf,
  wholeLook,
  type Extents,
  type Look,
  type Margins,
  type Projection,
} from './projection.ts';
import { useRoom, type Room } from './useRoom.ts';

/** Least and greatest enlargement over the look at which all is seen. */
const LEAST_ZOOM = 0.5;
const GREATEST_ZOOM = 400;

export interface Drawing {
  readonly ref: RefObject<HTMLDivElement | null>;
  readonly room: Room | null;
  readonly projection: Projection | null;
  readonly zoom: number;
  /** Enlarges about a pixel, the middle of the picture by default. */
  readonly zoomBy: (factor: number, about?: Point) => void;
  /** Moves the picture by pixels. */
  readonly panBy: (dx: number, dy: number) => void;
  /** Brings a point in mm to the middle, enlarged so many times over the whole look. */
  readonly lookAt: (center: Point, zoom: number) => void;
  readonly showAll: () => void;
}

/** A drawing to scale in its room that can be enlarged and moved; starts with all of it seen. */
export function useDrawing(extents: Extents, margins: Margins): Drawing {
  const { ref, room } = useRoom();
  const [look, setLook] = useState<Look | null>(null);
  const now = look ?? wholeLook(extents);
  const projection = room === null ? null : projectionOf(extents, room, margins, now);

  const zoomBy = (factor: number, about?: Point): void => {
    const zoom = within(now.zoom * factor, LEAST_ZOOM, GREATEST_ZOOM);
    if (room === null || projection === null) return;
    const still = about === undefined ? now.center : projection.toModel(about);
    const by = now.zoom / zoom;
    setLook({
      zoom,
      center: {
        x: still.x + (now.center.x - still.x) * by,
        y: still.y + (now.center.y - still.y) * by,
      },
    });
  };
  const panBy = (dx: number, dy: number): void => {
    if (projection === null) return;
    const [from, to] = [projection.toModel({ x: 0, y: 0 }), projection.toModel({ x: dx, y: dy })];
    // The middle of the picture stays on the drawing, so that it cannot be lost.
    setLook({
      zoom: now.zoom,
      center: {
        x: within(now.center.x - (to.x - from.x), extents.x, extents.x + extents.w),
        y: within(now.center.y - (to.y - from.y), extents.y, extents.y + extents.h),
      },
    });
  };
  return {
    ref,
    room,
    projection,
    zoom: now.zoom,
    zoomBy,
    panBy,
    lookAt: (center, zoom) => setLook({ center, zoom: within(zoom, LEAST_ZOOM, GREATEST_ZOOM) }),
    showAll: () => setLook(null),
  };
}

const within = (value: number, least: number, greatest: number): number =>
  Math.min(Math.max(value, least), greatest);
