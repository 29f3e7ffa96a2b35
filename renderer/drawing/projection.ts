import type { Point } from '../../core/geometry/types.ts';
import type { Room } from './useRoom.ts';

/** What is drawn: its extents in mm, and whether its y points up. */
export interface Extents {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly yUp: boolean;
}

/** What is seen: how many times larger than when all of it is seen, and the middle of the picture in mm. */
export interface Look {
  readonly zoom: number;
  readonly center: Point;
}

/** Room in rem that figures need about the drawing. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How millimetres come to lie on the screen. */
export interface Projection {
  /** CSS pixels of 1 mm. */
  readonly scale: number;
  readonly toScreen: (point: Point) => Point;
  readonly toModel: (pixel: Point) => Point;
  /** Of an SVG group whose content is in mm with y down: of a drawing with y up, at -y. */
  readonly transform: string;
}

/** The look at which all of a drawing is seen. */
export const wholeLook = ({ x, y, w, h }: Extents): Look => ({
  zoom: 1,
  center: { x: x + w / 2, y: y + h / 2 },
});

/** Pixels of 1 mm at which a drawing and its figures just fit their room. */
function fitScale({ w, h }: Extents, { width, height, rem }: Room, margins: Margins): number {
  const across = (width - (margins.left + margins.right) * rem) / Math.max(w, 1e-6);
  const down = (height - (margins.top + margins.bottom) * rem) / Math.max(h, 1e-6);
  return Math.max(Math.min(across, down), 0.01);
}

/** The projection of a look into a room. */
export function projectionOf(extents: Extents, room: Room, margins: Margins, look: Look): Projection {
  const scale = fitScale(extents, room, margins) * look.zoom;
  const up = extents.yUp ? -1 : 1;
  const middle = {
    x: (room.width + (margins.left - margins.right) * room.rem) / 2,
    y: (room.height + (margins.top - margins.bottom) * room.rem) / 2,
  };
  const offset = { x: middle.x - look.center.x * scale, y: middle.y - up * look.center.y * scale };
  return {
    scale,
    toScreen: ({ x, y }) => ({ x: x * scale + offset.x, y: up * y * scale + offset.y }),
    toModel: ({ x, y }) => ({ x: (x - offset.x) / scale, y: (up * (y - offset.y)) / scale }),
    transform: `matrix(${scale} 0 0 ${scale} ${offset.x} ${offset.y})`,
  };
}
