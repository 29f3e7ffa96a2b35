import { groupBy } from '../../core/collections/group-by.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { PartSummary } from '../../core/session/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { setsWords } from './sets-words.ts';

interface PartListProps {
  readonly parts: readonly PartSummary[];
  readonly partId: string | null;
  readonly unit: LengthUnit;
  readonly onSelect: (partId: string) => void;
}

/** The parts jig by jig, with copies, material and what the jig sets. */
export function PartList({ parts, partId, unit, onSelect }: PartListProps) {
  return (
    <nav className="parts-list" aria-label="Parts">
      {[...groupBy(parts, ({ jig }) => jig)].map(([jig, own]) => (
        <section key={jig} aria-label={`Jig ${jig}`}>
          <h3>{jig}</h3>
          <p>{setsWords(own[0]?.sets ?? [], unit)}</p>
          <ul>
            {own.map((part) => (
              <li key={part.id}>
                <button type="button" aria-current={part.id === partId} onClick={() => onSelect(part.id)}>
                  <span className="parts-list-name">
                    {part.id.slice(jig.length + 1).replaceAll('-', ' ')}
                  </span>
                  <span className="parts-list-make">
                    {part.copies} × {formatLength(part.thickness, unit)} {part.material}
                    {part.hand === null ? '' : `, ${part.hand} hand`}
                  </span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}
