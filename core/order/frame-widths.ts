import type { FrontConstruction } from './types.ts';

/** Widths of the stiles and the rails of a five-piece front, mm. */
export const frameWidths = ({
  memberWidth: stile,
  railWidth: rail = stile,
}: Extract<FrontConstruction, { kind: 'five-piece' }>): {
  readonly stile: number;
  readonly rail: number;
} => ({
  stile,
  rail,
});
