import type { Finding, Place } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { quoteText } from './quote-text.ts';
import { readNameCell } from './text-cell.ts';

/** What is wrong with an order's name, which is engraved on its jigs; undefined when it is right. */
export function nameFault(name: string): string | undefined {
  if (name.trim() === '') return 'it is empty; write a name';
  const read = readNameCell(name, { unit: 'in', styles: [], cabinetKinds: [], species: [], pulls: {} });
  return read.ok ? undefined : read.reason;
}

/** Checks the name of an order. */
export function checkName(name: string, at: Place): readonly Finding[] {
  const fault = nameFault(name);
  if (fault === undefined) return [];
  return [error('order/name', `The order's name reads ${quoteText(name)}: ${fault}.`, at, { read: name })];
}
