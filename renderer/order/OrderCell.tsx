import { memo } from 'react';
import type { Finding } from '../../core/findings/finding.ts';
import { setCell, settleCell } from '../store/changes.ts';
import { CellEditor } from './CellEditor.tsx';
import type { GridColumn } from './columns.ts';
import type { ActiveCell, CellEdit } from './useActiveCell.ts';

interface OrderCellProps {
  readonly column: GridColumn;
  readonly text: string;
  readonly rowId: string;
  readonly number: number;
  /** Place among the columns. */
  readonly at: number;
  readonly fault: Finding | null;
  /** Set while this is the active cell. */
  readonly active: ActiveCell | null;
  readonly onActive: (cell: ActiveCell) => void;
}

/** A cell to read, and while it is being changed an input in its place. */
export const OrderCell = memo(function OrderCell(props: OrderCellProps) {
  const { column, text, rowId, number, at, fault, active, onActive } = props;
  const edit = active?.edit ?? null;
  const activate = (begun: CellEdit | null): void => onActive({ rowId, at, edit: begun });

  const mark = fault === null ? '' : fault.severity === 'error' ? ' order-cell-fault' : ' order-cell-check';
  return (
    <span
      role="gridcell"
      tabIndex={active !== null && edit === null ? 0 : -1}
      className={`order-cell${column.kind === 'worked-out' ? ' order-figure app-figure' : ''}${mark}`}
      aria-readonly={column.kind !== 'cell'}
      aria-invalid={fault?.severity === 'error'}
      title={fault?.message ?? (text === '' ? undefined : text)}
      onFocus={() => {
        if (active === null) activate(null);
      }}
      // Within the editor the pointer is the editor's own.
      onMouseDown={() => {
        if (edit === null) activate(null);
      }}
      onDoubleClick={() => {
        if (edit === null && column.kind === 'cell') activate({ start: null, before: text });
      }}
    >
      {edit !== null && column.kind === 'cell' ? (
        <CellEditor
          label={`${column.title}, row ${number}`}
          text={text}
          edit={edit}
          onChange={(typed) => setCell(rowId, column.id, typed)}
          onLeave={() => settleCell(rowId, column.id)}
          onEnd={() => activate(null)}
        />
      ) : (
        text
      )}
    </span>
  );
});
