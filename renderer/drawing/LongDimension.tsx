import type { Point } from '../../core/geometry/types.ts';

interface LongDimensionProps {
  /** What is measured, in pixels. */
  readonly from: Point;
  readonly to: Point;
  /** How far the dimension line stands off, pixels: downwards of a level one, to the left of an upright one. */
  readonly off: number;
  readonly text: string;
  readonly rem: number;
}

/** A dimension with its figure in the middle of its line, level or upright, joined to what it measures. */
export function LongDimension({ from, to, off, text, rem }: LongDimensionProps) {
  const level = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  const [a, b] = level
    ? [
        { x: from.x, y: from.y + off },
        { x: to.x, y: from.y + off },
      ]
    : [
        { x: from.x - off, y: from.y },
        { x: from.x - off, y: to.y },
      ];
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const tick = 0.35 * rem;
  const beyond = level ? { x: 0, y: tick } : { x: -tick, y: 0 };
  const slant = (at: Point): string => `M ${at.x - tick / 2} ${at.y + tick / 2} l ${tick} ${-tick}`;
  const join = (start: Point, end: Point): string =>
    `M ${start.x} ${start.y} L ${end.x + beyond.x} ${end.y + beyond.y}`;
  return (
    <g className="drawing-dimension">
      <path
        className="drawing-join"
        d={`${join(from, a)} ${join(level ? { x: to.x, y: from.y } : { x: from.x, y: to.y }, b)}`}
      />
      <path d={`M ${a.x} ${a.y} L ${b.x} ${b.y} ${slant(a)} ${slant(b)}`} />
      <text
        x={middle.x}
        y={middle.y}
        textAnchor="middle"
        dominantBaseline="central"
        {...(level ? {} : { transform: `rotate(-90 ${middle.x} ${middle.y})` })}
      >
        {text}
      </text>
    </g>
  );
}
