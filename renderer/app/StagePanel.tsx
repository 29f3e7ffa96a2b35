import { useEffect, useMemo, useState } from 'react';
import { seatScene } from '../../core/scene/seat-scene.ts';
import type { PartDetail } from '../../core/session/types.ts';
import { CabinetView } from '../cabinet/CabinetView.tsx';
import { PartView } from '../parts/PartView.tsx';
import { SeatView } from '../seat/SeatView.tsx';
import { selectPart, selectRow } from '../store/changes.ts';
import { useProgram } from '../store/use-program.ts';
import { ActionButton } from './ActionButton.tsx';
import { designLine } from './design-line.ts';
import { useReducedMotion } from './useReducedMotion.ts';

/** What is looked at: the jig in its seat, the cabinet, or a flat part. */
export function StagePanel() {
  const stage = useProgram(({ view }) => view.stage);
  const title = { seat: 'Seat', cabinet: 'Cabinet', part: 'Part' }[stage];
  return (
    <section className="bench-panel bench-stage" aria-labelledby="stage-title">
      <header>
        <h2 id="stage-title">{title}</h2>
        <ActionButton action="stage.seat" label="Seat" />
        <ActionButton action="stage.cabinet" label="Cabinet" />
        <ActionButton action="stage.part" label="Part" />
      </header>
      <div className="bench-body">
        {stage === 'seat' ? (
          <SeatStagePanel />
        ) : stage === 'cabinet' ? (
          <CabinetStagePanel />
        ) : (
          <PartStagePanel />
        )}
      </div>
    </section>
  );
}

function SeatStagePanel() {
  const { rowId, jigId } = useProgram(({ selection }) => selection);
  const fit = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fits[rowId]));
  const jig = useProgram(({ designed }) => designed?.jigs.find(({ id }) => id === jigId));
  const uses = useProgram(({ designed }) => designed?.uses);
  const machine = useProgram(({ draft }) => draft.machine);
  const { unit, theme } = useProgram(({ view }) => view);
  const reducedMotion = useReducedMotion();
  const scene = useMemo(() => {
    if (fit === undefined || jig === undefined) return null;
    const edges = (uses ?? [])
      .filter((use) => use.rowId === rowId && use.jigId === jig.id)
      .map(({ edge }) => edge);
    return edges.length === 0 ? null : seatScene({ fit, jig, uses: edges, machine });
  }, [fit, jig, uses, rowId, machine]);
  return (
    <SeatView scene={scene} unit={unit} theme={theme} reducedMotion={reducedMotion} onFrame={markPicture} />
  );
}

/** Lets a browser's own tools, and `npm run speed`, see when a picture of the seat was drawn. */
function markPicture(): void {
  performance.clearMarks('seat-picture');
  performance.mark('seat-picture');
}

const NONE = {} as const;

function CabinetStagePanel() {
  const designed = useProgram((state) => state.designed);
  const rows = useProgram(({ draft }) => draft.rows);
  const construction = useProgram(({ draft }) => draft.standard.construction);
  const selection = useProgram((state) => state.selection);
  const unit = useProgram(({ view }) => view.unit);
  return (
    <CabinetView
      fits={designed?.fits ?? NONE}
      rows={rows}
      findings={designed?.findings ?? []}
      construction={construction}
      selection={selection}
      unit={unit}
      onSelect={selectRow}
    />
  );
}

function PartStagePanel() {
  const designed = useProgram((state) => state.designed);
  const partId = useProgram(({ selection }) => selection.partId);
  const machine = useProgram(({ draft }) => draft.machine);
  const unit = useProgram(({ view }) => view.unit);
  const [detail, setDetail] = useState<PartDetail | null>(null);
  useEffect(() => {
    let current = true;
    if (partId !== null) {
      void designLine()
        .part(partId)
        .then((found) => {
          if (current) setDetail(found);
        });
    }
    return () => {
      current = false;
    };
  }, [partId, designed]);
  return (
    <PartView
      parts={designed?.parts ?? []}
      partId={partId}
      detail={detail}
      machine={machine}
      unit={unit}
      onSelect={selectPart}
    />
  );
}
