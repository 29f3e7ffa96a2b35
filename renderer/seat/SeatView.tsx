import { lazy, Suspense, useCallback, useState } from 'react';
import type { LengthUnit } from '../../core/order/types.ts';
import type { SeatScene } from '../../core/scene/types.ts';
import type { ThemeName } from '../store/types.ts';
import { NoPicture } from './NoPicture.tsx';
import { canDraw } from './picture-canvas.ts';
import './seat.css';

export interface SeatViewProps {
  /** Null when no jig is picked, or the picked one is used on no drawer. */
  readonly scene: SeatScene | null;
  readonly unit: LengthUnit;
  readonly theme: ThemeName;
  readonly reducedMotion: boolean;
  /** Told of every picture that is drawn. */
  readonly onFrame?: () => void;
}

/** The heavy part, loaded when the first seat is looked at. */
const SeatStage = lazy(async () => ({ default: (await import('./SeatStage.tsx')).SeatStage }));

/** A jig seated on the back of a drawer's front, in space. */
export function SeatView(props: SeatViewProps) {
  const { scene, unit } = props;
  const [possible, setPossible] = useState(canDraw);
  const onLost = useCallback(() => setPossible(false), []);
  if (scene === null) {
    return <p className="seat-empty">Pick a jig, or a drawer that has one, to see the jig in its seat.</p>;
  }
  if (!possible) {
    return <NoPicture scene={scene} unit={unit} onRetry={() => setPossible(canDraw())} />;
  }
  return (
    <Suspense fallback={<p className="seat-empty">Drawing the seat…</p>}>
      <SeatStage {...props} scene={scene} onLost={onLost} />
    </Suspense>
  );
}
