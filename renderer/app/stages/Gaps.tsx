import { useMemo } from 'react';
import { hungBudget } from '../../../core/gap-view/hung-budget.ts';
import { drawerName } from '../../../core/fit/drawer-name.ts';
import { useDialInNotes } from '../../gaps/dial-in-notes.ts';
import { GapsView } from '../../gaps/GapsView.tsx';
import { useRework } from '../../gaps/useRework.ts';
import { useProgram } from '../../store/use-program.ts';
import { designLine } from '../design-line.ts';

const countRework = () => designLine().rework();

export function Gaps() {
  const rowId = useProgram(({ selection }) => selection.rowId);
  const designed = useProgram((state) => state.designed);
  const season = useProgram(({ designed }) => (rowId === null ? undefined : designed?.seasons[rowId]));
  const standard = useProgram(({ draft }) => draft.standard);
  const unit = useProgram(({ view }) => view.unit);
  const uses = useMemo(
    () => designed?.uses.filter((use) => use.rowId === rowId) ?? [],
    [designed?.uses, rowId],
  );
  const planned = rowId === null ? undefined : designed?.budgets[rowId];
  const budget = useMemo(
    () => (planned === undefined ? undefined : hungBudget(planned, standard, uses)),
    [planned, standard, uses],
  );
  const [notes, setNotes] = useDialInNotes(
    budget === undefined ? '' : `${rowId} ${drawerName(budget.fit.drawer)}`,
  );
  const [rework, count] = useRework(designed, countRework);
  return (
    <GapsView
      rowId={rowId}
      budget={budget ?? null}
      uses={uses}
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
