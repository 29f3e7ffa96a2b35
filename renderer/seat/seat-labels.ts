import type { Vec3 } from '../../core/jigs/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { dimensionName, dimensionText } from '../../core/scene/dimensions.ts';
import { showsDimensions } from '../../core/scene/shown-seat.ts';
import type { Line, SeatScene, Step } from '../../core/scene/types.ts';

/** Words at a place of the scene. */
export interface SeatLabel {
  readonly id: string;
  readonly kind: 'dimension' | 'left' | 'tool';
  readonly words: string;
  /** Larger, after the words. */
  readonly figure?: string;
  readonly at: Vec3;
  /** The words stand on the far side of `at` from here. */
  readonly away: Vec3;
  /** A line that no words may hide. */
  readonly spares?: Line;
}

const middle = ([a, b]: Line): Vec3 => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });

/** The labels of a seat in a step of its use. */
export function seatLabels(scene: SeatScene, unit: LengthUnit, step: Step | null): readonly SeatLabel[] {
  const { arrow } = scene.cabinetLeft;
  return [
    { id: 'left', kind: 'left', words: arrow.text, at: arrow.line[1], away: arrow.line[0] },
    ...(showsDimensions({ step })
      ? scene.dimensions.map((dimension): SeatLabel => {
          const at = middle(dimension.line);
          const { x, y, z } = dimension.side;
          return {
            id: dimension.id,
            kind: 'dimension',
            words: dimensionName(dimension),
            figure: dimensionText(dimension, unit),
            at,
            spares: dimension.line,
            away: { x: at.x - x, y: at.y - y, z: at.z - z },
          };
        })
      : []),
    ...(step?.tools ?? []).slice(0, 1).map(({ text, line }): SeatLabel => ({
      id: 'tool',
      kind: 'tool',
      words: text,
      at: line[0],
      away: line[1],
    })),
  ];
}
