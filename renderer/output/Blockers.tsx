import type { Draft, DraftRow } from '../../core/project/draft.ts';
import type { DraftFinding } from '../../core/session/types.ts';

interface BlockersProps {
  readonly findings: readonly DraftFinding[];
  readonly draft: Draft;
  readonly onRow: (rowId: string) => void;
}

/** The faults that stop the writing, each with the way to its row, and the warnings that do not. */
export function Blockers({ findings, draft, onRow }: BlockersProps) {
  const errors = findings.filter(({ finding }) => finding.severity === 'error');
  const warnings = findings.filter(({ finding }) => finding.severity === 'warning');
  if (findings.length === 0) return null;
  return (
    <section className="document-section" aria-labelledby="output-findings">
      <h3 id="output-findings">{errors.length > 0 ? '✕ In the way' : '! Worth a look'}</h3>
      <FindingList findings={errors} draft={draft} onRow={onRow} />
      {warnings.length === 0 ? null : (
        <details open={errors.length === 0 && warnings.length < 6}>
          <summary>
            {warnings.length === 1 ? 'One warning' : `${warnings.length} warnings`}: nothing is stopped by{' '}
            {warnings.length === 1 ? 'it' : 'them'}
          </summary>
          <FindingList findings={warnings} draft={draft} onRow={onRow} />
        </details>
      )}
    </section>
  );
}

function FindingList({ findings, draft, onRow }: BlockersProps) {
  return (
    <ul className="output-findings">
      {findings.map(({ rowId, finding }) => (
        <li key={`${rowId} ${finding.code} ${finding.message}`}>
          <span>{finding.message}</span>
          {rowId === null ? null : (
            <button type="button" onClick={() => onRow(rowId)}>
              Go to {rowName(draft.rows, rowId)}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

function rowName(rows: readonly DraftRow[], rowId: string): string {
  const index = rows.findIndex(({ id }) => id === rowId);
  const { cabinet, drawer } = rows[index]?.cells ?? {};
  const name = [cabinet, drawer].filter((word) => word !== undefined).join(' / ');
  return name === '' ? `row ${index + 1}` : name;
}
