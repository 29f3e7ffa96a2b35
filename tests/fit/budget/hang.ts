import type { Edge } from '../../../core/order/types.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import type { FrontCorner, Move } from '../../../core/fit/budget/places.ts';

/**
 * Hangs a drawer out of corner points, step by step as a shop does, and measures its gaps: an oracle that
 * knows nothing of coefficients. Seen by someone facing the cabinet: x to the right, y up, mm.
 */
export interface Mishaps {
  readonly openingWider: number;
  readonly openingHigher: number;
  readonly lean: number;
  readonly boxWider: number;
  readonly frontWider: number;
  readonly frontHigher: number;
  readonly jigSide: number;
  readonly jigBottom: number;
  readonly seatSide: number;
  readonly seatLeft: number;
  readonly seatRight: number;
  readonly slideSide: number;
  readonly slideLeft: number;
  readonly slideRight: number;
}

/** In the order in which the budget lists its errors. */
export const MISHAPS: readonly (keyof Mishaps)[] = [
  'openingWider',
  'openingHigher',
  'lean',
  'boxWider',
  'frontWider',
  'frontHigher',
  'jigSide',
  'jigBottom',
  'seatSide',
  'seatLeft',
  'seatRight',
  'slideSide',
  'slideLeft',
  'slideRight',
];

export const NO_MISHAPS: Mishaps = {
  openingWider: 0,
  openingHigher: 0,
  lean: 0,
  boxWider: 0,
  frontWider: 0,
  frontHigher: 0,
  jigSide: 0,
  jigBottom: 0,
  seatSide: 0,
  seatLeft: 0,
  seatRight: 0,
  slideSide: 0,
  slideLeft: 0,
  slideRight: 0,
};

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The gap (or how far a lap opens) at each place, by `edge corner`. */
export type Measured = ReadonlyMap<string, number>;

export function hang(fit: DrawerFit, mishaps: Mishaps, move: Move, registered: 'left' | 'right'): Measured {
  const m = mishaps;
  const { drawer, rules, overhang } = fit;
  // 1. The opening's edges, those that gaps are measured to: the outline that the front would fill without gaps.
  const reference = (edge: Edge) =>
    rules.edges[edge].overlay + (fit.gaps[edge] === null ? 0 : wantedGap(fit, edge));
  const leaning = (edge: Edge) => (rules.edges[edge].condition.kind === 'inset' ? m.lean : 0);
  const edgeX = (edge: 'left' | 'right', top: boolean) => {
    const outward = edge === 'left' ? -1 : 1;
    const half = (drawer.openingW + m.openingWider) / 2;
    return outward * (half + reference(edge)) + (leaning(edge) / 2) * (top ? 1 : -1);
  };
  const edgeY = { bottom: -reference('bottom'), top: drawer.openingH + m.openingHigher + reference('top') };

  // 2. The box between its slides, level, in its own coordinates: lower left corner at 0, 0.
  const boxW = fit.boxW + m.boxWider;
  // 3. The front set on the box by the jigs at the registered lower corner.
  const frontW = fit.frontW + m.frontWider;
  const frontH = fit.frontH + m.frontHigher;
  const sideOverhang = overhang[registered] + m.jigSide + m.seatSide;
  const lowAt = {
    left: overhang.bottom + m.jigBottom + m.seatLeft,
    right: overhang.bottom + m.jigBottom + m.seatRight,
  };
  const tilt = Math.atan2(lowAt.left - lowAt.right, fit.boxW);
  // The corner that the jig registers sits at the height of the lower edge; turn the front about the box's corner there.
  const pivot: Point = { x: registered === 'left' ? 0 : boxW, y: 0 };
  const leftEdge = registered === 'left' ? -sideOverhang : boxW + sideOverhang - frontW;
  const low = registered === 'left' ? lowAt.left : lowAt.right;
  const flat = (corner: FrontCorner): Point => ({
    x: leftEdge + (corner.endsWith('Right') ? frontW : 0),
    y: -low + (corner.startsWith('top') ? frontH : 0),
  });
  const onBox = (corner: FrontCorner) => turned(flat(corner), pivot, tilt);

  // 4. The box hung on its slides: sideways, and either side lifted by slide and adjuster.
  const lifted = { left: m.slideLeft + move.heightLeft, right: m.slideRight + move.heightRight };
  const turn = Math.atan2(lifted.right - lifted.left, fit.boxW);
  const hung = (corner: FrontCorner): Point => {
    const { x, y } = turned(onBox(corner), { x: 0, y: 0 }, turn);
    return { x: x - boxW / 2 + m.slideSide + move.side, y: y + rules.lift.value + lifted.left };
  };

  // 5. Measure.
  const gaps = (['topLeft', 'topRight', 'bottomLeft', 'bottomRight'] as const).flatMap((corner) => {
    const { x, y } = hung(corner);
    const [isLeft, isTop] = [corner.endsWith('Left'), corner.startsWith('top')];
    const side = isLeft ? x - edgeX('left', isTop) : edgeX('right', isTop) - x;
    const end = isTop ? edgeY.top - y : y - edgeY.bottom;
    return [
      [`${isLeft ? 'left' : 'right'} ${corner}`, side],
      [`${isTop ? 'top' : 'bottom'} ${corner}`, end],
    ] as const;
  });
  return new Map(gaps);
}

/** The gap that an edge's condition asks for. */
function wantedGap({ rules }: DrawerFit, edge: Edge): number {
  const { condition } = rules.edges[edge];
  return condition.kind === 'inset' || condition.kind === 'share' ? condition.gap : 0;
}

function turned({ x, y }: Point, about: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return {
    x: about.x + cos * (x - about.x) - sin * (y - about.y),
    y: about.y + sin * (x - about.x) + cos * (y - about.y),
  };
}
