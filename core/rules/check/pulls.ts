import type { Finding } from '../../findings/finding.ts';
import type { PullRule } from '../fastening-types.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** A sort of pulls goes by one word, and two holes stand apart. */
export const checkPulls = ({ pulls }: ShopStandard, fault: Fault): readonly Finding[] =>
  Object.entries(pulls).flatMap(([name, rule]) => [
    ...(/[\s,;]/.test(name.trim())
      ? [
          fault(
            'pull-name',
            `pulls.${name}`,
            'a pull cell begins with this name, so it is one word without a comma or semicolon',
          ),
        ]
      : []),
    ...checkCenters(`pulls.${name}.centers`, rule, fault),
  ]);

function checkCenters(
  field: string,
  { holes, centers, holeDiameter }: PullRule,
  fault: Fault,
): readonly Finding[] {
  if (holes === 1) {
    if (centers.value === 0) return [];
    return [fault('pull-centers', field, 'one hole has no distance from another; write 0, or two holes')];
  }
  if (centers.value > holeDiameter.value) return [];
  return [
    fault(
      'pull-centers',
      field,
      'two holes this near each other are one; write the distance of their middles',
    ),
  ];
}
