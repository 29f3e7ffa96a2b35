import type { SlopeBox } from '../slope.ts';
import type { LeanLimit, PlaneLimit } from './types.ts';

/**
 * What a plane's limit has over its least at an entry at the frame's origin, at the best slope of a box: no
 * slope in it does better, and the only slope of a box of one does exactly so. The entry adds `normal · entry`.
 *
 * The tip goes outwards, against the frame: for 1 of depth by -side and -rail. A disc of radius r square to the
 * direction d reaches r √(1 - (n·d)²) along a normal n, a level cut of the cylinder r √(1 + τ²) where τ is what
 * the axis goes along n for 1 of depth.
 */
export function bestOfPlane(plane: PlaneLimit, box: SlopeBox): number {
  const { normal, offset, least, part, unless } = plane;
  if (unless !== null && bestOfLean(unless, box) >= unless.least) return Infinity;
  const [a0, a1] = box.side;
  const [b0, b1] = box.rail;
  const low =
    (normal.x > 0 ? -normal.x * a1 : -normal.x * a0) + (normal.y > 0 ? -normal.y * b1 : -normal.y * b0);
  const high =
    (normal.x > 0 ? -normal.x * a0 : -normal.x * a1) + (normal.y > 0 ? -normal.y * b0 : -normal.y * b1);
  const [s0, s1] = box.secant;
  const { radius } = part;
  if (part.kind === 'slice') {
    const steep = low > 0 ? low : high < 0 ? high : 0;
    return part.along * high - radius * Math.sqrt(1 + steep * steep) - offset - least;
  }
  const { along } = part;
  const gone =
    along >= 0 ? along * (high > 0 ? high / s0 : high / s1) : along * (low > 0 ? low / s1 : low / s0);
  const sine = Math.min(1, Math.max(Math.abs(low), Math.abs(high)) / s0);
  return gone - radius * Math.sqrt(1 - sine * sine) - offset - least;
}

/** The most that a limit of the angle alone comes to within a box of slopes, mm; exact for one slope. */
export function bestOfLean(lean: LeanLimit, box: SlopeBox): number {
  const [s0, s1] = box.secant;
  const [t0, t1] = box.tangent;
  const { base, secant, cosine, sine, tangent } = lean;
  return (
    base +
    (secant === 0 ? 0 : secant * (secant > 0 ? s1 : s0)) +
    (cosine === 0 ? 0 : cosine / (cosine > 0 ? s0 : s1)) +
    (sine === 0 ? 0 : sine > 0 ? (sine * t1) / s1 : (sine * t0) / s0) +
    (tangent === 0 ? 0 : tangent * (tangent > 0 ? t1 : t0))
  );
}
