import { useSyncExternalStore } from 'react';

const query = matchMedia('(prefers-reduced-motion: reduce)');

/** Whether the person at the screen asked the system for less motion. */
export const useReducedMotion = (): boolean =>
  useSyncExternalStore(
    (changed) => {
      query.addEventListener('change', changed);
      return () => query.removeEventListener('change', changed);
    },
    () => query.matches,
  );
