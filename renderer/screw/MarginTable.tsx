import type { Margin } from '../../core/fastening/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { letterOf } from '../../core/screw-section/letters.ts';
import type { ScrewSection } from '../../core/screw-section/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { roundTo } from '../../core/units/tolerances.ts';

interface MarginTableProps {
  readonly section: ScrewSection;
  readonly cures: readonly string[];
  readonly unit: LengthUnit;
}

/** Every limit of a screw: what there is, what is asked for, and what is left; and what would cure a miss. */
export function MarginTable({ section, cures, unit }: MarginTableProps) {
  const { margins } = section;
  return (
    <section className="parts-panel screw-margins" aria-label="Limits of this screw">
      <h4>Limits</h4>
      <table>
        <thead>
          <tr>
            <th scope="col">In the drawing</th>
            <th scope="col">Limit</th>
            <th scope="col">There is</th>
            <th scope="col">Asked for</th>
            <th scope="col">To spare</th>
          </tr>
        </thead>
        <tbody>
          {margins.map((margin) => {
            const fails = margin.over < -1e-6;
            return (
              <tr key={`${margin.limit} ${margin.against}`} className={fails ? 'screw-fails' : ''}>
                <td>{letterOf(section, margin.limit) ?? '–'}</td>
                <th scope="row">
                  {fails ? '✕ ' : ''}
                  {margin.limit}
                  <span className="screw-against"> {margin.against}</span>
                </th>
                <td className="app-figure">{figure(margin, margin.is, unit)}</td>
                <td className="app-figure">{figure(margin, margin.least, unit)}</td>
                <td className="app-figure">{figure(margin, margin.over, unit)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {cures.length === 0 ? null : (
        <>
          <h4>What would cure it</h4>
          <ul>
            {cures.map((cure) => (
              <li key={cure}>{cure}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function figure({ limit }: Margin, value: number, unit: LengthUnit): string {
  if (limit === 'angle') return `${roundTo(value, 1)}°`;
  if (limit === 'withdrawal') return `${Math.round(value)} N`;
  return formatLength(roundTo(value, 2), unit);
}
