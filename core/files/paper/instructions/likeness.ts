import type { Fastening } from '../../../fastening/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import { EDGES } from '../../../order/types.ts';
import type { Likeness } from '../alike.ts';
import type { SetupAid, SetupJig } from './types.ts';

/**
 * What makes drawers one setup: jigs, what they set, wood, screw and bit. Of the overhangs only those that a jig sets;
 * without jigs, all but the top one, which is left over.
 */
export function setupLikeness(
  fit: DrawerFit,
  fastening: Fastening | null,
  jigs: readonly SetupJig[],
  sideways: number,
): Likeness {
  const set = EDGES.filter((edge) =>
    jigs.length === 0 ? edge !== 'top' : jigs.some(({ edges }) => edges.includes(edge)),
  );
  return {
    words: [...jigs.map(({ id, edges }) => `${id} ${edges.join(' ')}`), fastening?.screw?.name ?? ''],
    numbers: [
      ...set.map((edge) => fit.overhang[edge]),
      fit.frontThickness,
      fit.boxFront,
      fit.rules.backBevel.value,
      fit.rules.startLow.value,
      sideways,
      fastening?.holes?.pilotDiameter ?? 0,
      fastening?.holes?.pilotDepth ?? 0,
      fastening?.holes?.clearanceDiameter ?? 0,
    ],
  };
}

/** What makes drawers of a setup one variant: guides, and the places of all screws. */
export function variantLikeness(fastening: Fastening | null, aids: readonly SetupAid[]): Likeness {
  const places = fastening?.places ?? [];
  return {
    words: [
      ...aids.map(({ id, corner }) => `${id} ${corner === null ? '' : `${corner.end} ${corner.hand}`}`),
      ...places.map(({ corner: { hand, end }, index }) => `${hand} ${end} ${index}`),
    ],
    numbers: places.flatMap(({ lean, fromSide, fromEnd }) => [lean.side, lean.rail, fromSide, fromEnd]),
  };
}
