import type { Outcome } from '../../core/findings/finding.ts';
import { parseCurrentMachine } from '../../core/machine/parse-current-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { DocumentPlace } from '../../core/order/field-findings.ts';
import { parseCurrentStandard } from '../../core/rules/parse-current-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { FIRST_MACHINE, FIRST_STANDARD } from '../../shared/beginning.ts';

interface FirstDocuments {
  readonly standard: ShopStandard;
  readonly machine: MachineProfile;
}

/**
 * The shop standard and the machine profile that a new order begins with. The built page has here what they come to,
 * and not the means to read them, which would keep the first screen waiting (`renderer/build/read-constants.ts`).
 */
export const FIRST_DOCUMENTS: FirstDocuments = {
  standard: sound(parseCurrentStandard, FIRST_STANDARD),
  machine: sound(parseCurrentMachine, FIRST_MACHINE),
};

/** What comes with the program is right, and of this version. */
function sound<T>(
  parse: (json: unknown, place: DocumentPlace) => Outcome<T | null>,
  { name, json }: typeof FIRST_STANDARD,
): T {
  const { value, findings } = parse(json, { file: name });
  if (value === null) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}
