import type { Point } from '../../core/geometry/types.ts';
import { TAIL, type FigurePlace } from './small-gap-place.ts';

interface SmallGapProps {
  /** The ends in pixels, in any order. */
  readonly from: Point;
  readonly to: Point;
  readonly figure: FigurePlace;
  readonly text: string;
  readonly rem: number;
  readonly wrong: boolean;
}

/** A dimension that is too small to hold its figure: arrows point at it from outside, the figure beside one. */
export function SmallGap({ from, to, figure, text, rem, wrong }: SmallGapProps) {
  const level = figure === 'left' || figure === 'right';
  const [a, b] = level
    ? [Math.min(from.x, to.x), Math.max(from.x, to.x)]
    : [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  const across = level ? from.y : from.x;
  const at = (along: number, off = 0): string =>
    level ? `${along} ${across + off}` : `${across + off} ${along}`;
  const tail = TAIL * rem;
  const head = 0.3 * rem;
  const arrow = (tip: number, way: 1 | -1): string =>
    `M ${at(tip + way * tail)} L ${at(tip)} M ${at(tip + way * head, head / 2)} L ${at(tip)} L ${at(tip + way * head, -head / 2)}`;
  const place = {
    left: { x: a - tail - 0.25 * rem, y: across, anchor: 'end' },
    right: { x: b + tail + 0.25 * rem, y: across, anchor: 'start' },
    above: { x: across, y: a - tail - 0.6 * rem, anchor: 'middle' },
    below: { x: across, y: b + tail + 0.6 * rem, anchor: 'middle' },
  } as const;
  const { x, y, anchor } = place[figure];
  return (
    <g className={wrong ? 'drawing-dimension drawing-wrong' : 'drawing-dimension'}>
      <path d={`${arrow(a, -1)} ${arrow(b, 1)}`} />
      <text x={x} y={y} textAnchor={anchor} dominantBaseline="central">
        {text}
      </text>
    </g>
  );
}
