import { useEffect, useState } from 'react';
import type { Means } from '../seat/useMeans.ts';

/** ms. What is not on the screen by then is not waited for: no seat may be shown, or nothing to draw it with. */
const PATIENCE: Readonly<Record<Means, number>> = { flat: 400, space: 1000 };

interface Shown {
  readonly promise: Promise<void>;
  readonly resolve: () => void;
}

const shownIn = (): Shown => {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => {
    resolve = done;
  });
  return { promise, resolve };
};

const first: Readonly<Record<Means, Shown>> = { flat: shownIn(), space: shownIn() };

/** Says that a picture of a seat has been drawn; two frames later it is on the screen. */
export const pictureShown = (means: Means): void => {
  requestAnimationFrame(() => requestAnimationFrame(first[means].resolve));
};

/** Ends when the first picture of a seat has been drawn flat, or in space, or would have been long ago. */
export const firstPicture = (means: Means): Promise<void> =>
  Promise.race([first[means].promise, new Promise<void>((resolve) => setTimeout(resolve, PATIENCE[means]))]);

let isOver = false;

/** Whether the first picture need not be waited for any more, by what takes long to draw beside it. */
export function useAfterPicture(): boolean {
  const [isAfter, setAfter] = useState(isOver);
  useEffect(() => {
    if (isAfter) return;
    void firstPicture('flat').then(() => {
      isOver = true;
      setAfter(true);
    });
  }, [isAfter]);
  return isAfter;
}
