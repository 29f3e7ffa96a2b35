import harborLibrary from '../../assets/orders/harbor-library.csv?raw';
import type { Outcome } from '../../core/findings/finding.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { FIRST_MACHINE, FIRST_STANDARD } from '../../shared/beginning.ts';

/** The shop standard that a new order begins with. */
export const firstStandard = (): ShopStandard => sound(parseStandard, FIRST_STANDARD);

/** The machine profile that a new order begins with. */
export const firstMachine = (): MachineProfile => sound(parseMachine, FIRST_MACHINE);

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

/** What comes with the program is right. */
function sound<T>(
  parse: (json: unknown, file: string) => Outcome<T | null>,
  { name, json }: typeof FIRST_STANDARD,
): T {
  const { value, findings } = parse(json, name);
  if (value === null) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}
