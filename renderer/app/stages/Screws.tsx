import { ScrewView } from '../../screw/ScrewView.tsx';
import { useProgram } from '../../store/use-program.ts';

export function Screws() {
  const rowId = useProgram(({ selection }) => selection.rowId);
  const fastening = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fastenings[rowId]));
  const standard = useProgram(({ draft }) => draft.standard);
  const unit = useProgram(({ view }) => view.unit);
  return <ScrewView fastening={fastening ?? null} standard={standard} unit={unit} />;
}
