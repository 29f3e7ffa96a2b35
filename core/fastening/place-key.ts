import type { StockScrew } from '../rules/fastening-types.ts';
import { cornerFrame, intoFrame } from './corner-frame.ts';
import type { DrawerContext } from './drawer-context.ts';
import type { PlaceSpec } from './place-spec.ts';
import type { Ways } from './smallest-angle.ts';

/**
 * All that the limits of a place depend on, measured from its corner, as a text: places with the same key are
 * solved alike, so that the same corner of either hand is one problem, and so are drawers that are alike. It
 * leaves out what the standard says, which is the same for a whole order.
 */
export function placeKey(context: DrawerContext, screw: StockScrew, spec: PlaceSpec, ways: Ways): string {
  const { fit, walls, pullHoles, guideThickness, species } = context;
  const frame = cornerFrame(walls, spec.corner);
  // The front's corners nearest to the corner of the box and across from it.
  const corners = [intoFrame(frame, { x: 0, y: 0 }), intoFrame(frame, { x: fit.frontW, y: fit.frontH })];
  const [x, y] = [corners.map((corner) => corner.x), corners.map((corner) => corner.y)];
  const centers = pullHoles.centers.map((center) => intoFrame(frame, center));
  return JSON.stringify([
    screw,
    spec.corner.end,
    spec.index > 0,
    spec.along,
    spec.aim,
    ways,
    [spec.prefer, spec.from, spec.to].map((point) => [tidy(point.x), tidy(point.y)]),
    x.toSorted(ascending),
    y.toSorted(ascending),
    fit.drawer.front,
    fit.frontThickness,
    fit.rules.backBevel.value,
    [walls.innerWidth, walls.height, walls.floor, walls.side, walls.front, walls.back].map(tidy),
    pullHoles.diameter,
    centers.toSorted((a, b) => a.x - b.x || a.y - b.y),
    guideThickness,
    species.softwood,
  ]);
}

const ascending = (a: number, b: number): number => a - b;

/** Without float noise. */
const tidy = (value: number): number => Math.round(value * 1e9) / 1e9;
