import type { Finding, Outcome } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { offsetContour } from '../geometry/offset.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Operation } from '../machine/operations.ts';
import type { Feature, Part } from './types.ts';

/** Which way the middle of the cut lies from the drawn line: out of the part, into a hole, or on it. */
const SIDE: Readonly<Record<Operation, 1 | 0 | -1>> = {
  engrave: 0,
  drill: 0,
  pocket: -1,
  'cut-inner': -1,
  tab: 0,
  'cut-outer': 1,
};

/**
 * What the machine follows: every cut moved by half the kerf (of a router, by the tool's radius) to the waste
 * side, arcs staying arcs. With compensation left to the machine, the part as it is.
 */
export function compensate(part: Part, machine: MachineProfile): Outcome<readonly Feature[]> {
  if (machine.compensation === 'machine' || machine.kerf === 0) return { value: part.features, findings: [] };
  const findings: Finding[] = [];
  const features = part.features.map((feature): Feature => {
    const side = SIDE[feature.operation];
    const { contour } = feature;
    // A laser engraves a pocket's area as it is drawn.
    if (
      side === 0 ||
      contour.kind === 'path' ||
      (feature.operation === 'pocket' && machine.kind !== 'router')
    ) {
      return feature;
    }
    const moved = offsetContour(contour, (side * machine.kerf) / 2);
    findings.push(...moved.findings);
    const [only, ...others] = moved.value;
    if (only === undefined || others.length > 0) {
      findings.push(
        error(
          'parts/too-narrow',
          `a ${feature.operation} contour of ${part.id} cannot be followed by a cut ${machine.kerf} mm wide: ${only === undefined ? 'nothing of it is left' : `it falls into ${moved.value.length} pieces`}; use a narrower tool`,
          {},
          { part: part.id, kerf: machine.kerf },
        ),
      );
      return feature;
    }
    return { ...feature, contour: only };
  });
  return { value: features, findings };
}
