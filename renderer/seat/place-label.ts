export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels that a label keeps from the rim of the picture. */
const RIM = 6;

/**
 * The upper left corner of a label that stands beyond a point, as seen from another, with so many pixels
 * between; kept inside the picture. Straight on, it stands above.
 */
export function placeLabel(at: Spot, away: Spot, label: Size, picture: Size, gap: number): Spot {
  const [dx, dy] = [at.x - away.x, at.y - away.y];
  const length = Math.hypot(dx, dy);
  const [x, y] = length < 0.3 ? [0, -1] : [dx / length, dy / length];
  // From the label's middle to its rim, the way that it is pushed.
  const rim = Math.min(
    Math.abs(x) < 1e-3 ? Infinity : label.width / 2 / Math.abs(x),
    Math.abs(y) < 1e-3 ? Infinity : label.height / 2 / Math.abs(y),
  );
  const reach = gap + rim;
  const within = (value: number, most: number): number => Math.max(RIM, Math.min(most - RIM, value));
  return {
    x: within(at.x + x * reach - label.width / 2, picture.width - label.width),
    y: within(at.y + y * reach - label.height / 2, picture.height - label.height),
  };
}

/** A rectangle of the picture that something stands in already. */
export interface Taken extends Spot, Size {}

/** Pixels between two labels. */
const BETWEEN = 4;

const meets = (a: Taken, b: Taken): boolean =>
  a.x < b.x + b.width + BETWEEN &&
  b.x < a.x + a.width + BETWEEN &&
  a.y < b.y + b.height + BETWEEN &&
  b.y < a.y + a.height + BETWEEN;

/** The nearest place, straight up, down or to a side, where a label covers nothing that stands there already. */
export function clearOf(spot: Spot, label: Size, taken: readonly Taken[], picture: Size): Spot {
  const step = 2 * BETWEEN;
  const places = [
    spot,
    ...taken.flatMap(({ x, y, width, height }): readonly Spot[] => [
      { x: spot.x, y: y - label.height - step },
      { x: spot.x, y: y + height + step },
      { x: x - label.width - step, y: spot.y },
      { x: x + width + step, y: spot.y },
    ]),
  ]
    .filter(
      ({ x, y }) =>
        x >= 0 && y >= 0 && x + label.width <= picture.width && y + label.height <= picture.height,
    )
    .toSorted((a, b) => Math.hypot(a.x - spot.x, a.y - spot.y) - Math.hypot(b.x - spot.x, b.y - spot.y));
  return places.find((place) => !taken.some((one) => meets({ ...place, ...label }, one))) ?? spot;
}
