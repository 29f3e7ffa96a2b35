import type { Finding } from '../../core/findings/finding.ts';

/** How a row stands, with the word and the mark that tell it without colour. */
export interface RowState {
  readonly name: 'fault' | 'check' | 'right' | 'waiting';
  readonly mark: string;
  readonly word: string;
}

const STATES: Readonly<Record<RowState['name'], RowState>> = {
  fault: { name: 'fault', mark: '✕', word: 'fault' },
  check: { name: 'check', mark: '!', word: 'check' },
  right: { name: 'right', mark: '✓', word: 'fits' },
  waiting: { name: 'waiting', mark: '…', word: 'being worked out' },
};

/** The state of a row from what is found of it and whether it has been worked out. */
export function rowState(findings: readonly Finding[], isWorkedOut: boolean): RowState {
  if (findings.some(({ severity }) => severity === 'error')) return STATES.fault;
  if (findings.length > 0) return STATES.check;
  return isWorkedOut ? STATES.right : STATES.waiting;
}
