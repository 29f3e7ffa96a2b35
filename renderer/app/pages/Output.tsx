import { OutputPage } from '../../output/OutputPage.tsx';
import { selectRow, setPage, setRegistration } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';
import { cancelOutput, showOutput, startOutput, useOutputRun } from '../output-run.ts';

/** The cut files of the order. */
export function Output() {
  const draft = useProgram((state) => state.draft);
  const designed = useProgram((state) => state.designed);
  const { run } = useOutputRun();
  return (
    <main aria-label="Files out">
      <OutputPage
        draft={draft}
        designed={designed}
        run={run}
        onStart={() => void startOutput(draft.name)}
        onCancel={cancelOutput}
        onShow={() => void showOutput()}
        onRegistration={setRegistration}
        onMachine={() => setPage('machine')}
        onRow={(rowId) => {
          selectRow(rowId);
          setPage('bench');
        }}
      />
    </main>
  );
}
