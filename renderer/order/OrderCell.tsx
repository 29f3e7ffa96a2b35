import { memo, useEffect, useRef } from 'react';
import type { Finding } from '../../core/findings/finding.ts';
import { setCell, settle, settleCell } from '../store/changes.ts';
import type { GridColumn } from './columns.ts';
import type { ActiveCell } from './useGridKeys.ts';

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
  readonly focusable: boolean;
  readonly onActive: (cell: ActiveCell) => void;
}

/** A cell to read, and while it is being changed an input in its place. */
export const OrderCell = memo(function OrderCell(props: OrderCellProps) {
  const { column, text, rowId, number, at, fault, active, focusable, onActive } = props;
  const cell = useRef<HTMLSpanElement>(null);
  const editing = active?.editing === true && column.kind === 'cell';
  useEffect(() => {
    if (active !== null && !active.editing) cell.current?.focus();
  }, [active]);

  const mark = fault === null ? '' : fault.severity === 'error' ? ' order-cell-fault' : ' order-cell-check';
  return (
    <span
      ref={cell}
      role="gridcell"
      tabIndex={focusable && !editing ? 0 : -1}
      className={`order-cell${column.kind === 'worked-out' ? ' order-figure app-figure' : ''}${mark}`}
      aria-readonly={column.kind !== 'cell'}
      aria-invalid={fault?.severity === 'error'}
      title={fault?.message ?? (text === '' ? undefined : text)}
      onFocus={() => {
        if (active === null) onActive({ rowId, at, editing: false, start: null });
      }}
      onMouseDown={() => onActive({ rowId, at, editing: false, start: null })}
      onDoubleClick={() => onActive({ rowId, at, editing: true, start: null })}
    >
      {editing && column.kind === 'cell' ? (
        <CellEditor
          label={`${column.title}, row ${number}`}
          text={text}
          start={active.start}
          onChange={(typed) => setCell(rowId, column.id, typed)}
          onLeave={() => settleCell(rowId, column.id)}
          onEnd={() => onActive({ rowId, at, editing: false, start: null })}
        />
      ) : (
        text
      )}
    </span>
  );
});

interface CellEditorProps {
  readonly label: string;
  readonly text: string;
  /** What was typed to begin with, in place of the text; null keeps the text. */
  readonly start: string | null;
  readonly onChange: (text: string) => void;
  readonly onLeave: () => void;
  readonly onEnd: () => void;
}

function CellEditor({ label, text, start, onChange, onLeave, onEnd }: CellEditorProps) {
  const input = useRef<HTMLInputElement>(null);
  const before = useRef(text);
  useEffect(() => {
    const field = input.current;
    if (field === null) return;
    field.focus();
    if (start === null) field.select();
    // The field begins with what was typed; later strokes are its own.
    else field.setSelectionRange(start.length, start.length);
  }, [start]);
  return (
    <input
      ref={input}
      className="order-editor"
      aria-label={label}
      autoComplete="off"
      spellCheck={false}
      defaultValue={start ?? text}
      onChange={(event) => onChange(event.target.value)}
      onBlur={onLeave}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        onChange(before.current);
        settle();
        onEnd();
      }}
    />
  );
}
