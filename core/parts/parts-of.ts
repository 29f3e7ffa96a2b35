import type { Outcome } from '../findings/finding.ts';
import type { Jig } from '../jigs/types.ts';
import { makePart } from './make-part.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { StrokeFont } from './stroke-font.ts';
import type { Part } from './types.ts';

/** All parts of the jigs of an order, jig by jig. */
export function partsOf(
  jigs: readonly Jig[],
  machine: MachineProfile,
  font: StrokeFont,
  /** So that a caller can keep the parts of jigs that are still the same. */
  ofJig: typeof partsOfJig = partsOfJig,
): Outcome<readonly Part[]> {
  const made = jigs.map((jig) => ofJig(jig, machine, font));
  return { value: made.flatMap(({ value }) => value), findings: made.flatMap(({ findings }) => findings) };
}

/** The parts of one jig. */
export function partsOfJig(jig: Jig, machine: MachineProfile, font: StrokeFont): Outcome<readonly Part[]> {
  const made = jig.pieces.map((piece) => makePart(jig, piece, machine, font));
  return { value: made.map(({ value }) => value), findings: made.flatMap(({ findings }) => findings) };
}
