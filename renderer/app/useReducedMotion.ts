import { useSyncExternalStore } from 'react';

/** Whether the person at the screen asked the system for less motion. */
export const useReducedMotion = (): boolean =>
  useSyncExternalStore(
    watch,
    () => query().matches,
    () => false,
  );

const query = (): MediaQueryList => matchMedia('(prefers-reduced-motion: reduce)');

function watch(changed: () => void): () => void {
  const watched = query();
  watched.addEventListener('change', changed);
  return () => watched.removeEventListener('change', changed);
}
