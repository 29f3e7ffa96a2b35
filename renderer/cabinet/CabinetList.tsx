import type { CabinetEntry } from '../../core/elevation/list-cabinets.ts';
import { STATE_WORDS } from './state-words.ts';

interface CabinetListProps {
  readonly cabinets: readonly CabinetEntry[];
  /** Key of the cabinet that is shown. */
  readonly shown: string;
  readonly onSelect: (rowId: string) => void;
}

/** The cabinets of the order with their state; choosing one picks its first drawer. */
export function CabinetList({ cabinets, shown, onSelect }: CabinetListProps) {
  return (
    <nav className="cabinet-list" aria-label="Cabinets">
      <ul>
        {cabinets.map((cabinet) => (
          <li key={cabinet.key}>
            <button
              type="button"
              aria-current={cabinet.key === shown}
              onClick={() => {
                const [first] = cabinet.rowIds;
                if (first !== undefined) onSelect(first);
              }}
            >
              <span className="cabinet-list-name">
                {cabinet.name === '' ? 'No cabinet named' : cabinet.name}
              </span>
              <span className="cabinet-list-state">{stateText(cabinet)}</span>
            </button>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function stateText({ state, attention, rowIds }: CabinetEntry): string {
  const { mark, word } = STATE_WORDS[state];
  const drawers = `${rowIds.length} ${rowIds.length === 1 ? 'drawer' : 'drawers'}`;
  return state === 'right' ? `${mark} ${drawers}, ${word}` : `${mark} ${attention} of ${drawers}: ${word}`;
}
