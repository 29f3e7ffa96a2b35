import { useEffect, useState } from 'react';

/** ms that a move of a step takes, and that its words stand before the next. */
const MOVE = 900;
const READ = 3200;

interface Playing {
  readonly step: number | null;
  readonly playing: boolean;
  readonly reducedMotion: boolean;
  /** The step's words have stood long enough. */
  readonly onNext: () => void;
}

/** How much of a step's move has passed, 0 to 1; at once 1 for people who want no motion. */
export function useStepTime({ step, playing, reducedMotion, onNext }: Playing): number {
  const [now, setNow] = useState<{ readonly step: number | null; readonly share: number }>({
    step: null,
    share: 1,
  });
  const moves = step !== null && !reducedMotion;
  useEffect(() => {
    if (!moves) return undefined;
    const start = performance.now();
    let request = 0;
    const draw = (time: number): void => {
      const share = Math.min(1, Math.max(0, (time - start) / MOVE));
      setNow({ step, share });
      if (share < 1) request = requestAnimationFrame(draw);
    };
    request = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(request);
  }, [step, moves]);
  useEffect(() => {
    if (!playing || step === null) return undefined;
    const timer = setTimeout(onNext, MOVE + READ);
    return () => clearTimeout(timer);
  }, [playing, step, onNext]);
  if (!moves) return 1;
  return now.step === step ? eased(now.share) : 0;
}

/** Starts and ends slowly. */
const eased = (share: number): number => share * share * (3 - 2 * share);
