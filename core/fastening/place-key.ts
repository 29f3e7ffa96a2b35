import type { StockScrew } from '../rules/fastening-types.ts';
import { cornerFrame, intoFrame } from './corner-frame.ts';
import type { DrawerContext } from './drawer-context.ts';
import type { PlaceSpec } from './place-spec.ts';
import type { Ways } from './smallest-angle.ts';
import type { Corner } from './types.ts';

/**
 * All that the limits of a place depend on, measured from its corner, as a text: places with the same key are
 * solved alike, so that the same corner of either hand is one problem, and so are drawers that are alike. It
 * leaves out what the standard says, which is the same for a whole order.
 */
export function placeKey(context: DrawerContext, screw: StockScrew, spec: PlaceSpec, ways: Ways): string {
  const own = JSON.stringify([
    screw,
    spec.index > 0,
    spec.along,
    spec.aim,
    ways,
    [spec.prefer, spec.from, spec.to].map((point) => [tidy(point.x), tidy(point.y)]),
  ]);
  return `${own} ${cornerKey(context, spec.corner)}`;
}

/** Every screw of the stock is tried in every place of a corner, so what those have in common is kept. */
const corners = new WeakMap<DrawerContext, Map<string, string>>();

function cornerKey(context: DrawerContext, corner: Corner): string {
  const known = corners.get(context) ?? new Map<string, string>();
  corners.set(context, known);
  const name = `${corner.end} ${corner.hand}`;
  const before = known.get(name);
  if (before !== undefined) return before;
  const { fit, walls, pullHoles, guideThickness, species } = context;
  const frame = cornerFrame(walls, corner);
  // The front's corners nearest to the corner of the box and across from it.
  const ends = [intoFrame(frame, { x: 0, y: 0 }), intoFrame(frame, { x: fit.frontW, y: fit.frontH })];
  const [x, y] = [ends.map((end) => end.x), ends.map((end) => end.y)];
  const centers = pullHoles.centers.map((center) => intoFrame(frame, center));
  const key = JSON.stringify([
    corner.end,
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
  known.set(name, key);
  return key;
}

const ascending = (a: number, b: number): number => a - b;

/** Without float noise. */
const tidy = (value: number): number => Math.round(value * 1e9) / 1e9;
