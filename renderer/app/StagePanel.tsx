import { useEffect, useMemo, useState, type ReactNode } from 'react';
import { aidScene } from '../../core/scene/aid-scene.ts';
import { seatScene } from '../../core/scene/seat-scene.ts';
import type { PartDetail } from '../../core/session/types.ts';
import { CabinetView } from '../cabinet/CabinetView.tsx';
import { drawerName } from '../../core/fit/name.ts';
import { useDialInNotes } from '../gaps/dial-in-notes.ts';
import { GapsView } from '../gaps/GapsView.tsx';
import { useRework } from '../gaps/useRework.ts';
import { PartView } from '../parts/PartView.tsx';
import { SeatView } from '../seat/SeatView.tsx';
import { ScrewView } from '../screw/ScrewView.tsx';
import { selectPart, selectRow } from '../store/changes.ts';
import type { StageName } from '../store/types.ts';
import { useProgram } from '../store/use-program.ts';
import { ActionButton } from './ActionButton.tsx';
import { designLine } from './design-line.ts';
import { useReducedMotion } from './useReducedMotion.ts';

/** What is looked at: the jig in its seat, the cabinet, or a flat part. */
export function StagePanel() {
  const stage = useProgram(({ view }) => view.stage);
  const { title, Stage } = STAGES[stage];
  return (
    <section className="bench-panel bench-stage" aria-labelledby="stage-title">
      <header>
        <h2 id="stage-title">{title}</h2>
        <ActionButton action="stage.seat" label="Seat" />
        <ActionButton action="stage.cabinet" label="Cabinet" />
        <ActionButton action="stage.part" label="Part" />
        <ActionButton action="stage.screw" label="Screws" />
        <ActionButton action="stage.gaps" label="Gaps" />
      </header>
      <div className="bench-body">
        <Stage />
      </div>
    </section>
  );
}

function SeatStagePanel() {
  const { rowId, jigId } = useProgram(({ selection }) => selection);
  const fit = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fits[rowId]));
  const jig = useProgram(({ designed }) => designed?.jigs.find(({ id }) => id === jigId));
  const uses = useProgram(({ designed }) => designed?.uses);
  const aids = useProgram(({ designed }) => designed?.aids);
  const machine = useProgram(({ draft }) => draft.machine);
  const standard = useProgram(({ draft }) => draft.standard);
  const fastening = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fastenings[rowId]));
  const { unit, theme } = useProgram(({ view }) => view);
  const reducedMotion = useReducedMotion();
  const scene = useMemo(() => {
    if (fit === undefined || jig === undefined) return null;
    const own = (uses ?? []).filter((use) => use.rowId === rowId && use.jigId === jig.id);
    if (own.length > 0) {
      return seatScene({ fit, jig, uses: own, machine, box: standard.box, fastening: fastening ?? null });
    }
    const aid = (aids ?? []).find((one) => one.rowId === rowId && one.jigId === jig.id);
    return aid === undefined || fastening === undefined
      ? null
      : aidScene({ fastening, jig, corner: aid.corner, standard, machine });
  }, [fit, jig, uses, aids, rowId, machine, standard, fastening]);
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

function ScrewStagePanel() {
  const rowId = useProgram(({ selection }) => selection.rowId);
  const fastening = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fastenings[rowId]));
  const standard = useProgram(({ draft }) => draft.standard);
  const unit = useProgram(({ view }) => view.unit);
  return <ScrewView fastening={fastening ?? null} standard={standard} unit={unit} />;
}

const countRework = () => designLine().rework();

function GapsStagePanel() {
  const rowId = useProgram(({ selection }) => selection.rowId);
  const budgets = useProgram(({ designed }) => designed?.budgets ?? null);
  const season = useProgram(({ designed }) => (rowId === null ? undefined : designed?.seasons[rowId]));
  const standard = useProgram(({ draft }) => draft.standard);
  const unit = useProgram(({ view }) => view.unit);
  const budget = rowId === null ? undefined : budgets?.[rowId];
  const [notes, setNotes] = useDialInNotes(
    budget === undefined ? '' : `${rowId} ${drawerName(budget.fit.drawer)}`,
  );
  const [rework, count] = useRework(budgets, countRework);
  return (
    <GapsView
      rowId={rowId}
      budget={budget ?? null}
      season={season ?? null}
      standard={standard}
      unit={unit}
      rework={rework}
      notes={notes}
      onNotes={setNotes}
      onCount={count}
    />
  );
}

const STAGES: Readonly<Record<StageName, { readonly title: string; readonly Stage: () => ReactNode }>> = {
  seat: { title: 'Seat', Stage: SeatStagePanel },
  cabinet: { title: 'Cabinet', Stage: CabinetStagePanel },
  part: { title: 'Part', Stage: PartStagePanel },
  screw: { title: 'Screws', Stage: ScrewStagePanel },
  gaps: { title: 'Gaps', Stage: GapsStagePanel },
};
