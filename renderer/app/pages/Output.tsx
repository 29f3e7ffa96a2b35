import { OutputPage } from '../../output/OutputPage.tsx';
import { selectRow, setPage, setRegistration } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';
import { cancelOutput, setChoice, showOutput, sinceRun, startOutput, useOutputRun } from '../output-run.ts';

/** The cut files of the order. */
export function Output() {
  const draft = useProgram((state) => state.draft);
  const designed = useProgram((state) => state.designed);
  const output = useOutputRun();
  return (
    <main aria-label="Files out">
      <OutputPage
        draft={draft}
        designed={designed}
        choice={output.choice}
        onChoice={setChoice}
        run={output.run}
        since={sinceRun(output, draft)}
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
