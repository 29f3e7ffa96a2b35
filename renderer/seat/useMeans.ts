import { useCallback, useEffect, useState } from 'react';
import { canDraw, isReady } from './picture-canvas.ts';

/** What a seat is drawn with. */
export type Means = 'space' | 'flat';

/**
 * What the seat is drawn with, and whether it has been drawn in space. It is asked when the seat has been drawn flat,
 * for the answer takes a quarter of a second in which nothing else is done.
 */
export function useMeans() {
  const [means, setMeans] = useState<Means | 'not yet known'>(() => (isReady() ? 'space' : 'not yet known'));
  const [isDrawn, setDrawn] = useState(false);
  const tryAgain = useCallback(() => setMeans(canDraw() ? 'space' : 'flat'), []);
  useEffect(() => (means === 'not yet known' ? afterPaint(tryAgain) : undefined), [means, tryAgain]);
  const drawn = useCallback(() => setDrawn(true), []);
  const lost = useCallback(() => {
    setDrawn(false);
    setMeans('flat');
  }, []);
  return { means, isDrawn, drawn, lost, tryAgain };
}

/** ms. A page that is not idle by then is not waited for. */
const PATIENCE = 1000;

/** When what is on its way to the screen is there, and the page has nothing else to do. */
function afterPaint(go: () => void): () => void {
  let idle = 0;
  const request = requestAnimationFrame(() => {
    idle = requestIdleCallback(go, { timeout: PATIENCE });
  });
  return () => {
    cancelAnimationFrame(request);
    cancelIdleCallback(idle);
  };
}
