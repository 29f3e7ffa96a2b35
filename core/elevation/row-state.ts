import type { Finding } from '../findings/finding.ts';
import type { RowState } from './types.ts';

interface OfRow {
  readonly rowId: string | null;
  readonly finding: Pick<Finding, 'severity'>;
}

/** The worst that was found about a row. */
export function stateOf(rowId: string, findings: readonly OfRow[]): RowState {
  const own = findings.filter((found) => found.rowId === rowId);
  if (own.some(({ finding }) => finding.severity === 'error')) return 'error';
  return own.length > 0 ? 'warning' : 'right';
}
