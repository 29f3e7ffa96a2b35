import type { ElevationDrawer } from '../../core/elevation/types.ts';

/** The drawer that a key leads to: the nearest one in an arrow's direction, the first, the last, or the same. */
export function nextDrawer(
  key: string,
  from: ElevationDrawer,
  drawers: readonly ElevationDrawer[],
): ElevationDrawer | null {
  if (key === 'Home') return drawers[0] ?? null;
  if (key === 'End') return drawers.at(-1) ?? null;
  if (key === 'Enter' || key === ' ') return from;
  const way = WAYS[key];
  if (way === undefined) return null;
  const ahead = drawers.flatMap((drawer) => {
    const [dx, dy] = [middle(drawer).x - middle(from).x, middle(drawer).y - middle(from).y];
    const along = dx * way.x + dy * way.y;
    const aside = Math.abs(dx * way.y) + Math.abs(dy * way.x);
    // One that is further aside than ahead is not in that direction.
    return along > 0 && aside <= along ? [{ drawer, reach: along + 2 * aside }] : [];
  });
  return ahead.toSorted((a, b) => a.reach - b.reach)[0]?.drawer ?? null;
}

const WAYS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const middle = ({ opening: { x, y, w, h } }: ElevationDrawer) => ({ x: x + w / 2, y: y + h / 2 });
