import { cornerReaches, hookedReach, stepReach, twoWayReaches, type MeasuredPart } from './overhangs.ts';

interface MeasuredJig {
  readonly kind: string;
  readonly hand: 'left' | 'right' | null;
  readonly backBevel: number;
  readonly frontThickness: number;
  readonly sheetThickness: number;
  /** How far outside the part the file's outline runs: half the kerf, or 0. */
  readonly outside: number;
  readonly part: (name: string) => MeasuredPart;
  readonly copies: (name: string) => number;
}

/**
 * The overhangs that a jig sets, measured on its cut parts and the front's edge that it hooks on; in the
 * order of its settings. A bevelled edge has come in by its height above the face where the lip ends.
 */
export function jigOverhangs(jig: MeasuredJig): readonly number[] {
  const { kind, hand, backBevel, frontThickness, sheetThickness, outside, part, copies } = jig;
  const slope = Math.tan((backBevel * Math.PI) / 180);
  const lipDepth = (suffix: string) =>
    (copies(`lip${suffix}`) + copies(`dust-layer${suffix}`)) * sheetThickness;
  const setback = (depth: number) => (frontThickness - depth) * slope;
  switch (kind) {
    case 'step profile': {
      const profile = part('profile');
      const depth = -Math.min(...profile.outline.map(([, y]) => y)) - outside;
      return [stepReach(profile) + setback(depth)];
    }
    case 'corner fence': {
      const { bottom, side } = cornerReaches(part('plate'), part('lip'), hand ?? 'right');
      return [bottom + setback(lipDepth('')), side + setback(lipDepth(''))];
    }
    case 'side spacer':
      if (copies('lip-wide') > 0) {
        const { wide, narrow } = twoWayReaches(part('plate'), part('lip-wide'), part('lip-narrow'));
        return [wide + setback(lipDepth('-wide')), narrow + setback(lipDepth('-narrow'))];
      }
      return [hookedReach(part('plate'), part('lip')) + setback(lipDepth(''))];
    case 'bottom fence':
      return [hookedReach(part('plate'), part('lip')) + setback(lipDepth(''))];
    default:
      throw new Error(`no way to measure a ${kind}`);
  }
}
