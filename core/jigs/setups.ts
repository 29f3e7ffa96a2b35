import type { Setup } from './types.ts';

/**
 * The one set-up that a jig must be built for so that it serves all of these: the thinnest front, the
 * shortest edge, the thinnest box front. They share edge, overhang and bevel.
 */
export function strictest(setups: readonly Setup[]): Setup {
  const first = firstSetup(setups);
  const least = (of: (setup: Setup) => number): number => Math.min(...setups.map(of));
  return {
    ...first,
    frontThickness: least((setup) => setup.frontThickness),
    edgeLength: least((setup) => setup.edgeLength),
    boxLength: least((setup) => setup.boxLength),
    clearLength: least((setup) => setup.clearLength),
    boxReach: least((setup) => setup.boxReach),
  };
}

export function firstSetup(setups: readonly Setup[]): Setup {
  const [first] = setups;
  if (first === undefined) throw new RangeError('a jig needs a set-up');
  return first;
}

/** The set-up of a kind that serves one. */
export function onlySetup(setups: readonly Setup[]): Setup {
  if (setups.length !== 1) throw new RangeError(`this jig serves one set-up, not ${setups.length}`);
  return firstSetup(setups);
}
