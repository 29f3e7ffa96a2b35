import type { Fastening } from '../../fastening/types.ts';
import type { Point } from '../../geometry/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { TemplateSetup } from './types.ts';

/**
 * The ways in which templates could place a drawer's pull holes, the best first; each is one set-up or, for two
 * pulls, a pair. One pull: all of its holes from the cabinet's left, or from the centre line. Two pulls: each from
 * its own side. The holes of one pull are never parted, or the front's width would add to their distance.
 */
export function templateSetups(
  { fit, pullHoles }: Fastening,
  { fastening, pulls }: Pick<ShopStandard, 'fastening' | 'pulls'>,
): readonly (readonly TemplateSetup[])[] {
  const { centers, diameter } = pullHoles;
  if (centers.length === 0) return [];
  const { frontW, frontH, drawer } = fit;
  const common = {
    bit: diameter,
    bore: diameter + fastening.guide.boreFit.value,
    frontThickness: fit.frontThickness,
    backBevel: fit.rules.backBevel.value,
    front: { x: frontW, y: frontH },
  };
  // Back view: the cabinet's left edge is at x = front width.
  const fromLeft = sorted(centers.map(({ x, y }) => ({ x: frontW - x, y: frontH - y })));
  const left: TemplateSetup = { ...common, at: 'left', holes: fromLeft };
  const holesOfOne = pulls[drawer.pullChoice?.sort ?? '']?.holes ?? centers.length;
  if (centers.length <= holesOfOne) {
    const middle = sorted(fromLeft.map(({ x, y }) => ({ x: x - frontW / 2, y })));
    return [[left], [{ ...common, at: 'middle', holes: middle }]];
  }
  const half = frontW / 2;
  const right = sorted(fromLeft.filter(({ x }) => x > half).map(({ x, y }) => ({ x: frontW - x, y })));
  return [
    [
      { ...left, holes: fromLeft.filter(({ x }) => x <= half) },
      { ...common, at: 'right', holes: right },
    ],
  ];
}

const sorted = (points: readonly Point[]): readonly Point[] =>
  points.toSorted((a, b) => a.x - b.x || a.y - b.y);
