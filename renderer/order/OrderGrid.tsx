import { useVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useMemo, useRef } from 'react';
import { useAfterPicture } from '../app/first-picture.ts';
import { selectRow } from '../store/changes.ts';
import { shownRows } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import type { GridColumn } from './columns.ts';
import { OrderRow } from './OrderRow.tsx';
import { useGridKeys } from './useGridKeys.ts';

/** px at 100 %; the rows are as high as their text, this is for those that are not drawn. */
const ROW_HEIGHT = 34;

/** The rows of the order; only those in sight are drawn, so that a long order stays quick. */
export function OrderGrid({ columns }: { readonly columns: readonly GridColumn[] }) {
  const room = useRef<HTMLDivElement>(null);
  const draft = useProgram((state) => state.draft);
  const designed = useProgram((state) => state.designed);
  const view = useProgram((state) => state.view);
  const picked = useProgram(({ selection }) => selection.rowId);
  // Hundreds of cells: the picture does not wait for them.
  const isDrawn = useAfterPicture();
  const rows = useMemo(
    () => (isDrawn ? shownRows({ ...useProgram.getState(), draft, designed, view }) : []),
    [isDrawn, draft, designed, view],
  );
  const numbers = useMemo(() => new Map(draft.rows.map(({ id }, index) => [id, index + 1])), [draft.rows]);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => room.current,
    estimateSize: () => ROW_HEIGHT,
    overscan: 4,
    getItemKey: (index) => rows[index]?.id ?? index,
  });
  const keys = useGridKeys({ room, rows, columns, scrollTo: (index) => virtual.scrollToIndex(index) });

  useEffect(() => {
    const index = rows.findIndex(({ id }) => id === picked);
    if (index >= 0) virtual.scrollToIndex(index);
    // Only when another row is picked: typing in a row must not move it about.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [picked]);

  const template = `2.25rem 2.5rem ${columns.map(({ width }) => `${width}rem`).join(' ')}`;
  return (
    <div
      ref={room}
      className="bench-body order-grid"
      role="grid"
      aria-label="Drawers of the order"
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length + 2}
      aria-describedby="order-hint"
      onKeyDown={keys.onKeyDown}
      onPaste={keys.onPaste}
      onCopy={keys.onCopy}
    >
      <div role="rowgroup" className="order-head">
        <div role="row" className="order-line" aria-rowindex={1} style={{ gridTemplateColumns: template }}>
          <span role="columnheader">
            <span className="app-hidden">State</span>
          </span>
          <span role="columnheader">
            <span className="app-hidden">Row</span>
          </span>
          {columns.map(({ id, title, kind }) => (
            <span key={id} role="columnheader" className={kind === 'worked-out' ? 'order-figure' : undefined}>
              {title}
            </span>
          ))}
        </div>
      </div>
      <div role="rowgroup" className="order-rows" style={{ height: virtual.getTotalSize() }}>
        {virtual.getVirtualItems().map((item) => {
          const row = rows[item.index];
          return row === undefined ? null : (
            <OrderRow
              key={row.id}
              ref={virtual.measureElement}
              index={item.index}
              number={numbers.get(row.id) ?? 0}
              row={row}
              columns={columns}
              template={template}
              top={item.start}
              picked={row.id === picked}
              active={keys.active}
              onPick={() => selectRow(row.id)}
              onActive={keys.setActive}
            />
          );
        })}
      </div>
      {isDrawn && rows.length === 0 ? <p className="order-empty">{emptyWords(draft.rows.length)}</p> : null}
      <p id="order-hint" className="app-hidden">
        Arrow keys move between cells. Type or press Enter to change a cell, Escape to leave it as it was.
        Cells of a spreadsheet can be pasted.
      </p>
    </div>
  );
}

const emptyWords = (all: number): string =>
  all === 0 ? 'No drawers yet. Add one, open a CSV file, or paste cells.' : 'Nothing needs attention.';
