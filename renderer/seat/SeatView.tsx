import type { LengthUnit } from '../../core/order/types.ts';
import type { SeatScene } from '../../core/scene/types.ts';
import './seat.css';
import { SeatStage } from './SeatStage.tsx';
import type { Means } from './useMeans.ts';

export interface SeatViewProps {
  /** Null when no jig is picked, or the picked one is used on no drawer. */
  readonly scene: SeatScene | null;
  readonly unit: LengthUnit;
  readonly reducedMotion: boolean;
  /** Told of every picture that is drawn, and whether in space or flat. */
  readonly onFrame?: (means: Means) => void;
}

/** A jig seated on the back of a drawer's front, in space. */
export function SeatView(props: SeatViewProps) {
  const { scene } = props;
  return scene === null ? (
    <p className="seat-empty">Pick a jig, or a drawer that has one, to see the jig in its seat.</p>
  ) : (
    <SeatStage {...props} scene={scene} />
  );
}
