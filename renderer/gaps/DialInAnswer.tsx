import type { Outcome } from '../../core/findings/finding.ts';
import { cornerWords } from '../../core/fit/dial-in/readings.ts';
import type { DialIn, SeenGaps } from '../../core/fit/dial-in/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import { dialTable } from '../../core/gap-view/dial-table.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

interface DialInAnswerProps {
  readonly fit: DrawerFit;
  readonly seen: SeenGaps;
  readonly answer: Outcome<DialIn | null>;
  readonly unit: LengthUnit;
}

/** What to turn, in order; the gaps after it; and what stays. */
export function DialInAnswer({ fit, seen, answer, unit }: DialInAnswerProps) {
  const { value, findings } = answer;
  const rows = value === null ? [] : dialTable(fit, seen, value);
  const length = (mm: number): string => formatLength(mm, unit);
  return (
    <section className="gaps-answer" aria-labelledby="gaps-answer">
      <h4 id="gaps-answer">Turn these, in this order</h4>
      {value === null || rows.length === 0 ? (
        <p>Nothing was read yet.</p>
      ) : (
        <>
          <div role="status">
            {value.moves.length === 0 ? (
              <p>
                {value.incurable.length === 0
                  ? '✓ Nothing to turn: leave the adjusters as they are.'
                  : 'No turn of an adjuster makes it better.'}
              </p>
            ) : (
              <ol className="gaps-moves">
                {value.moves.map(({ adjuster, words }) => (
                  <li key={adjuster}>{words}</li>
                ))}
              </ol>
            )}
            {value.left === null ? null : (
              <p>Then every gap that was read is within {length(value.left)} of the one wanted.</p>
            )}
          </div>
          <table className="gaps-table">
            <caption>Gaps after these moves</caption>
            <thead>
              <tr>
                <th scope="col">Gap</th>
                <th scope="col">Read</th>
                <th scope="col">After</th>
                <th scope="col">Wanted</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={`${row.edge} ${row.corner}`}>
                  <th scope="row">
                    {row.edge}, {cornerWords(row.corner)}
                  </th>
                  <td className="app-figure">{length(row.seen)}</td>
                  <td className="app-figure">
                    {row.after < 0 ? `✕ ${length(row.after)}` : length(row.after)}
                  </td>
                  <td className="app-figure">{length(row.wanted)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <Lines title="What no adjuster cures" lines={value.incurable.map(({ words }) => `✕ ${words}`)} />
          <Lines title="What the readings do not tell" lines={value.notes} />
        </>
      )}
      <Lines title="Readings that are left out" lines={findings.map(({ message }) => message)} />
    </section>
  );
}

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <>
      <h4>{title}</h4>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
