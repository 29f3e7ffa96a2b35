import { useProgram } from '../store/use-program.ts';
import { useNotices } from './notices.ts';

/** What the order comes to, and the last thing that was done or went wrong. */
export function StatusLine() {
  const drawers = useProgram(({ designed }) =>
    Object.values(designed?.fits ?? {}).reduce((sum, { drawer }) => sum + drawer.qty, 0),
  );
  const aids = useProgram(({ designed }) => new Set(designed?.aids.map(({ jigId }) => jigId)).size);
  const jigs = useProgram(({ designed }) => designed?.jigs.length ?? 0) - aids;
  const parts = useProgram(
    ({ designed }) => designed?.parts.reduce((sum, { copies }) => sum + copies, 0) ?? 0,
  );
  const errors = useProgram(({ designed }) => count(designed?.findings, 'error'));
  const warnings = useProgram(({ designed }) => count(designed?.findings, 'warning'));
  const isWhole = useProgram(({ designed }) => designed?.isWhole === true);
  const { text } = useNotices();
  return (
    <footer className="app-status">
      {isWhole ? (
        <>
          <span>
            {many(drawers, 'drawer')}, {many(jigs, 'jig')}, {aids} for drilling, {many(parts, 'piece')}
          </span>
          <span>
            {many(errors, 'fault')}, {warnings} to check
          </span>
        </>
      ) : (
        <span>Jigs and screws are being worked out…</span>
      )}
      <span role="status">{text}</span>
    </footer>
  );
}

const many = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;

const count = (
  findings: readonly { readonly finding: { readonly severity: string } }[] | undefined,
  severity: string,
): number => findings?.filter(({ finding }) => finding.severity === severity).length ?? 0;
