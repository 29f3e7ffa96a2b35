import { CabinetView } from '../../cabinet/CabinetView.tsx';
import { selectRow } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';

const NONE = {} as const;

export function Cabinet() {
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
