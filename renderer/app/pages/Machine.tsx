import { MachinePage } from '../../machine/MachinePage.tsx';
import { setMachine } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';
import { ComparerContext } from '../../worker/comparer.ts';
import { COMPARER } from '../comparer.ts';
import { openText, saveText } from '../text-files.ts';

/** The machine profile of the document. */
export function Machine() {
  const draft = useProgram((state) => state.draft);
  const unit = useProgram(({ view }) => view.unit);
  return (
    <main aria-label="Machine">
      <ComparerContext value={COMPARER}>
        <MachinePage
          machine={draft.machine}
          draft={draft}
          unit={unit}
          onApply={(machine) => setMachine(machine)}
          onOpen={openText}
          onSave={saveText}
        />
      </ComparerContext>
    </main>
  );
}
