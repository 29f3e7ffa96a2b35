import type { Finding } from '../../core/findings/finding.ts';

/** How many of them are written out. */
const SHOWN = 8;

/** What would be found of the order that is not found now. */
export function BegunFindings({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const rest = findings.length - SHOWN;
  return (
    <>
      <p>{findings.length === 1 ? 'One finding comes up:' : `${findings.length} findings come up:`}</p>
      <ul>
        {findings.slice(0, SHOWN).map(({ code, severity, message }) => (
          <li key={`${code} ${message}`}>
            {severity === 'error' ? '✕' : '!'} {message}
          </li>
        ))}
        {rest > 0 ? <li>and {rest} more</li> : null}
      </ul>
    </>
  );
}
