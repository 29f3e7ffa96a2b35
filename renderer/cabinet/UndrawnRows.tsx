import type { DraftRow } from '../../core/project/draft.ts';

interface UndrawnRowsProps {
  readonly rows: readonly DraftRow[];
  readonly picked: string | null;
  readonly onSelect: (rowId: string) => void;
}

/** The rows of the shown cabinet that have a fault and no fit: what the drawing leaves out. */
export function UndrawnRows({ rows, picked, onSelect }: UndrawnRowsProps) {
  if (rows.length === 0) return null;
  return (
    <p className="cabinet-undrawn">
      ✕ Not drawn, because of faults; the drawers around {rows.length === 1 ? 'it' : 'them'} close up:{' '}
      {rows.map(({ id, cells }) => (
        <button key={id} type="button" aria-pressed={id === picked} onClick={() => onSelect(id)}>
          {cells.drawer ?? 'a drawer without a name'}
        </button>
      ))}
    </p>
  );
}
