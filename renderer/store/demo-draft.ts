import harborLibrary from '../../assets/orders/harbor-library.csv?raw';
import type { Outcome } from '../../core/findings/finding.ts';
import { parseCurrentMachine } from '../../core/machine/parse-current-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { DocumentPlace } from '../../core/order/field-findings.ts';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseCurrentStandard } from '../../core/rules/parse-current-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { FIRST_MACHINE, FIRST_STANDARD } from '../../shared/beginning.ts';

/** The shop standard that a new order begins with. */
const firstStandard = (): ShopStandard => sound(parseCurrentStandard, FIRST_STANDARD);

/** The machine profile that a new order begins with. */
const firstMachine = (): MachineProfile => sound(parseCurrentMachine, FIRST_MACHINE);

/** The demo order, which is open at the first start. */
export function demoDraft(): Draft {
  const { value, findings } = draftFromCsv(harborLibrary, {
    file: 'harbor-library.csv',
    name: 'Harbor library',
    date: '2026-12-01',
    unit: 'in',
    standard: firstStandard(),
    machine: firstMachine(),
    registration: 'edge',
    sharing: 'each',
  });
  if (findings.length > 0) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}

/** An order without drawers. */
export const emptyDraft = (): Draft => ({
  name: 'New order',
  unit: 'in',
  rows: [],
  standard: firstStandard(),
  machine: firstMachine(),
  registration: 'edge',
  sharing: 'each',
});

/** What comes with the program is right, and of this version. */
function sound<T>(
  parse: (json: unknown, place: DocumentPlace) => Outcome<T | null>,
  { name, json }: typeof FIRST_STANDARD,
): T {
  const { value, findings } = parse(json, { file: name });
  if (value === null) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}
