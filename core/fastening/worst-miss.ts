import type { Impossible } from './types.ts';

/** Of the places that no limit allows the one that is missed by most; undefined when there is none. */
export function worstMiss(impossible: readonly Impossible[]): Impossible | undefined {
  const over = ({ margins }: Impossible): number => margins[0]?.over ?? 0;
  return impossible.toSorted((a, b) => over(a) - over(b))[0];
}
