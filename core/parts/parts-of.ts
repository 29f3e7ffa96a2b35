import type { Finding, Outcome } from '../findings/finding.ts';
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
): Outcome<readonly Part[]> {
  const findings: Finding[] = [];
  const parts = jigs.flatMap((jig) =>
    jig.pieces.map((piece) => {
      const part = makePart(jig, piece, machine, font);
      findings.push(...part.findings);
      return part.value;
    }),
  );
  return { value: parts, findings };
}
