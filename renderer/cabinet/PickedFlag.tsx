import type { Point } from '../../core/geometry/types.ts';

/** The mark of the picked drawer: a triangle in its upper left corner, whatever the colours. */
export function PickedFlag({ corner, rem }: { readonly corner: Point; readonly rem: number }) {
  const { x, y } = corner;
  const side = 1.1 * rem;
  return (
    <g className="cabinet-picked-flag">
      <path d={`M ${x} ${y} h ${side} l ${-side} ${side} Z`} />
      <path
        className="cabinet-picked-tick"
        d={`M ${x + 0.18 * rem} ${y + 0.32 * rem} l ${0.14 * rem} ${0.16 * rem} l ${0.3 * rem} ${-0.34 * rem}`}
      />
    </g>
  );
}
