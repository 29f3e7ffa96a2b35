import type { Setup } from './types.ts';

/**
 * The one set-up that a jig must be built for so that it serves all of these: the thinnest front, the
 * shortest edge, the thinnest box front. They share edge, overhang and bevel.
 */
export function strictest(setups: readonly Setup[]): Setup {
  const first = firstSetup(setups);
  let { frontThickness, edgeLength, boxLength, clearLength, boxReach } = first;
  for (const setup of setups) {
    frontThickness = Math.min(frontThickness, setup.frontThickness);
    edgeLength = Math.min(edgeLength, setup.edgeLength);
    boxLength = Math.min(boxLength, setup.boxLength);
    clearLength = Math.min(clearLength, setup.clearLength);
    boxReach = Math.min(boxReach, setup.boxReach);
  }
  return { ...first, frontThickness, edgeLength, boxLength, clearLength, boxReach };
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
