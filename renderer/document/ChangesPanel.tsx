import type { ReactNode } from 'react';

interface ChangesPanelProps {
  readonly isChanged: boolean;
  /** Whole sentences; nothing can be applied while there are any. */
  readonly faults: readonly string[];
  readonly onApply: () => void;
  readonly onDrop: () => void;
  /** What the order makes of the edit. */
  readonly children: ReactNode;
}

/** What an edit would do to the order, and the two ways to end it. */
export function ChangesPanel({ isChanged, faults, onApply, onDrop, children }: ChangesPanelProps) {
  const isFaulty = faults.length > 0;
  return (
    <section className="document-changes" aria-label="What changes in the order" tabIndex={0}>
      <h3>What changes in the order</h3>
      <div className="document-acts">
        <button type="button" className="app-main-button" disabled={!isChanged || isFaulty} onClick={onApply}>
          Apply to the order
        </button>
        <button type="button" disabled={!isChanged && !isFaulty} onClick={onDrop}>
          Drop the edit
        </button>
      </div>
      <div role="status">
        {isFaulty ? (
          <>
            <p className="document-summary">
              ✕ {faults.length} {faults.length === 1 ? 'fault' : 'faults'}
            </p>
            <ul>
              {faults.map((fault) => (
                <li key={fault}>{fault}</li>
              ))}
            </ul>
          </>
        ) : null}
        {isChanged || isFaulty ? null : <p>Nothing is edited. Change a value to see what it does.</p>}
        {isFaulty ? null : children}
      </div>
    </section>
  );
}
