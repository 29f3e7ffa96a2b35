import { memo, type Ref } from 'react';
import type { DraftRow } from '../../core/project/draft.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { selectRow } from '../store/changes.ts';
import { findingsOfRow } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import type { GridColumn } from './columns.ts';
import { OrderCell } from './OrderCell.tsx';
import { rowState } from './row-state.ts';
import type { ActiveCell } from './useActiveCell.ts';

interface OrderRowProps {
  readonly ref: Ref<HTMLDivElement>;
  readonly index: number;
  readonly number: number;
  readonly row: DraftRow;
  readonly columns: readonly GridColumn[];
  readonly template: string;
  /** px from the first row. */
  readonly top: number;
  readonly picked: boolean;
  /** Set while the active cell is in this row. */
  readonly active: ActiveCell | null;
  readonly onActive: (cell: ActiveCell) => void;
}

/** One drawer of the order, with what is found of it below its cells while it is picked. */
export const OrderRow = memo(function OrderRow(props: OrderRowProps) {
  const { ref, index, number, row, columns, template, top, picked, active, onActive } = props;
  const fit = useProgram(({ designed }) => designed?.fits[row.id]);
  const fastening = useProgram(({ designed }) => designed?.fastenings[row.id] ?? null);
  const unit = useProgram(({ view }) => view.unit);
  const findings = useProgram((state) => findingsOfRow(state, row.id));
  const isWhole = useProgram(({ designed }) => designed?.isWhole === true);
  const state = rowState(findings, fit !== undefined && isWhole);
  return (
    <div
      ref={ref}
      data-index={index}
      className={`order-place${picked ? ' order-picked' : ''}`}
      style={{ transform: `translateY(${top}px)` }}
      role="row"
      aria-rowindex={index + 2}
      aria-selected={picked}
      onClick={() => selectRow(row.id)}
    >
      <div className="order-line" role="presentation" style={{ gridTemplateColumns: template }}>
        <span role="gridcell" className={`order-state order-state-${state.name}`} title={state.word}>
          <span aria-hidden="true">{state.mark}</span>
          <span className="app-hidden">{state.word}</span>
        </span>
        <span role="gridcell" className="order-number app-figure">
          {number}
        </span>
        {columns.map((column, at) => (
          <OrderCell
            key={column.id}
            column={column}
            text={
              column.kind === 'cell'
                ? (row.cells[column.id] ?? '')
                : fit
                  ? column.text(fit, unit, fastening)
                  : ''
            }
            rowId={row.id}
            number={number}
            at={at}
            fault={column.kind === 'cell' ? faultOf(findings, column.id) : null}
            active={active?.at === at ? active : null}
            onActive={onActive}
          />
        ))}
      </div>
      {picked && findings.length > 0 ? (
        <div role="gridcell" className="order-findings" aria-colspan={columns.length + 2}>
          {findings.map((finding) => (
            <p key={finding.message} className={`order-finding order-finding-${finding.severity}`}>
              <strong>{finding.severity === 'error' ? '✕ Fault:' : '! Check:'}</strong> {finding.message}
            </p>
          ))}
        </div>
      ) : null}
    </div>
  );
});

const faultOf = (findings: readonly Finding[], column: string): Finding | null =>
  findings.find(({ at }) => at.column === column) ?? null;
