import type { Vec3 } from '../../core/jigs/types.ts';
import { directionsOf } from '../../core/scene/directions.ts';
import type { Extent, SeatScene } from '../../core/scene/types.ts';
import type { Look, Shift } from './seat-state.ts';

/** A look at one seat: where one sees it from, what is in the middle, and how large. */
export interface Sight {
  readonly azimuth: number;
  readonly elevation: number;
  /** In the middle of the picture. */
  readonly focus: Vec3;
  /** What is seen when it is not enlarged. */
  readonly half: Extent;
  readonly enlarged: number;
}

/** A look, from the standard view of a seat that it starts from. */
export function sightOf(look: Look, { views, middle }: SeatScene): Sight {
  const view = views.find(({ id }) => id === look.view);
  const azimuth = (view?.azimuth ?? 0) + look.turned.azimuth;
  const elevation = (view?.elevation ?? 0) + look.turned.elevation;
  const focus = view?.focus ?? middle;
  const { right, up } = directionsOf({ azimuth, elevation });
  const { x, y } = look.off;
  return {
    azimuth,
    elevation,
    focus: {
      x: focus.x + right.x * x + up.x * y,
      y: focus.y + right.y * x + up.y * y,
      z: focus.z + right.z * x + up.z * y,
    },
    half: view?.half ?? { across: 100, up: 100 },
    enlarged: look.enlarged,
  };
}

/** Pixels at the sides, and at top and bottom, that words need. */
const WORDS = { across: 90, up: 44 } as const;

/** Pixels for a mm, such that all that must be seen is in the picture when it is not enlarged. */
export function pixelsPerMm(
  size: { readonly width: number; readonly height: number },
  { half, enlarged }: Pick<Sight, 'half' | 'enlarged'>,
): number {
  const across = Math.max(size.width - 2 * WORDS.across, size.width / 2) / (2 * half.across);
  const up = Math.max(size.height - 2 * WORDS.up, size.height / 2) / (2 * half.up);
  return Math.max(0.01, Math.min(across, up)) * enlarged;
}

/** A turn by degrees that goes no farther than straight from above or from below. */
export const turnBy = ({ elevation }: Sight, azimuth: number, up: number) => ({
  do: 'turn' as const,
  azimuth,
  elevation: Math.max(-90, Math.min(90, elevation + up)) - elevation,
});

/** A shift of what is in the middle, in the plane of the picture, mm. */
export const moveBy = (x: number, y: number): { readonly do: 'move'; readonly by: Shift } => ({
  do: 'move',
  by: { x, y },
});
