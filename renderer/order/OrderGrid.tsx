import { defaultRangeExtractor, useVirtualizer, type Range } from '@tanstack/react-virtual';
import { useEffect, useMemo, useRef } from 'react';
import { useAfterPicture } from '../app/first-picture.ts';
import { shownRows } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import type { GridColumn } from './columns.ts';
import { OrderRow } from './OrderRow.tsx';
import { useActiveCell } from './useActiveCell.ts';
import { useGridClipboard } from './useGridClipboard.ts';
import { useGridFocus } from './useGridFocus.ts';
import { useGridKeys } from './useGridKeys.ts';

/** px at 100 %; the rows are as high as their text, this is for those that are not drawn. */
const ROW_HEIGHT = 34;

/** The rows of the order; only those in sight and the active one are drawn, so that a long order stays quick. */
export function OrderGrid({ columns }: { readonly columns: readonly GridColumn[] }) {
  const room = useRef<HTMLDivElement>(null);
  const draft = useProgram((state) => state.draft);
  const designed = useProgram((state) => state.designed);
  const view = useProgram((state) => state.view);
  const selection = useProgram((state) => state.selection);
  const picked = selection.rowId;
  // Hundreds of cells: the picture does not wait for them.
  const isDrawn = useAfterPicture();
  const rows = useMemo(
    () => (isDrawn ? shownRows({ draft, designed, view, selection }) : []),
    [isDrawn, draft, designed, view, selection],
  );
  const numbers = useMemo(() => new Map(draft.rows.map(({ id }, index) => [id, index + 1])), [draft.rows]);
  const [active, activate] = useActiveCell(rows, columns, picked);
  const activeIndex = rows.findIndex(({ id }) => id === active?.rowId);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => room.current,
    estimateSize: () => ROW_HEIGHT,
    overscan: 4,
    getItemKey: (index) => rows[index]?.id ?? index,
    // Out of sight the active cell keeps the keyboard, and its editor what was typed.
    rangeExtractor: (range) => withIndex(range, activeIndex),
  });
  const onKeyDown = useGridKeys({
    rows,
    columns,
    active,
    activate,
    scrollTo: (index) => virtual.scrollToIndex(index),
  });
  const { onPaste, onCopy } = useGridClipboard(active, rows, columns);
  const { onFocus, onBlur } = useGridFocus(room, active);

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
      // Without a cell the table itself takes the keyboard: cells can be pasted into it.
      tabIndex={active === null ? 0 : undefined}
      onKeyDown={onKeyDown}
      onPaste={onPaste}
      onCopy={onCopy}
      onFocus={onFocus}
      onBlur={onBlur}
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
              active={active?.rowId === row.id ? active : null}
              onActive={activate}
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

/** The indices of the rows in sight, and one more that may be out of it. */
function withIndex(range: Range, index: number): number[] {
  const drawn = defaultRangeExtractor(range);
  const isMore = index >= 0 && index < range.count && !drawn.includes(index);
  return isMore ? [...drawn, index].sort((a, b) => a - b) : drawn;
}

const emptyWords = (all: number): string =>
  all === 0 ? 'No drawers yet. Add one, open a CSV file, or paste cells.' : 'Nothing needs attention.';
