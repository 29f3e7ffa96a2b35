import { checkChoice, includesJig, type OutputChoice } from '../../core/files/output-choice.ts';
import { folderContents } from '../../core/files/folder-contents.ts';
import type { Registration } from '../../core/jigs/plan-types.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { Designed } from '../../core/session/types.ts';
import { Cautions } from '../document/Cautions.tsx';
import '../document/document.css';
import { Blockers } from './Blockers.tsx';
import { FileTable } from './FileTable.tsx';
import { JigChoice } from './JigChoice.tsx';
import { KindChoice } from './KindChoice.tsx';
import { OutputOptions } from './OutputOptions.tsx';
import './output.css';
import { PaperChoice } from './PaperChoice.tsx';
import { RunPanel } from './RunPanel.tsx';
import type { OutputRun, SinceRun } from './run.ts';

export interface OutputPageProps {
  readonly draft: Draft;
  /** Null until the draft has been designed. */
  readonly designed: Designed | null;
  readonly choice: OutputChoice;
  readonly onChoice: (choice: OutputChoice) => void;
  readonly run: OutputRun;
  readonly since: SinceRun;
  readonly onStart: () => void;
  readonly onCancel: () => void;
  /** Shows the finished folder. */
  readonly onShow: () => void;
  readonly onRegistration: (registration: Registration) => void;
  /** Goes to the machine profile. */
  readonly onMachine: () => void;
  /** Goes to a row of the order. */
  readonly onRow: (rowId: string) => void;
}

/** The files for the shop: what will be written, what is in the way, and the writing itself. */
export function OutputPage(props: OutputPageProps) {
  const { draft, designed, choice, onChoice, run, since } = props;
  const { onStart, onCancel, onShow, onRegistration, onMachine, onRow } = props;
  const findings = designed?.findings ?? [];
  const jigs = designed?.jigs ?? [];
  const parts = (designed?.parts ?? []).filter(({ jig }) => includesJig(choice, jig));
  const reason = whyNot(designed, choice);
  return (
    <div className="document">
      <div className="document-head">
        <h2>Files out</h2>
      </div>
      <div className="document-form">
        <Blockers findings={findings} draft={draft} onRow={onRow} />
        <OutputOptions draft={draft} onRegistration={onRegistration} onMachine={onMachine} />
        <section className="document-section" aria-labelledby="output-choice">
          <h3 id="output-choice">Which files</h3>
          <KindChoice choice={choice} onChoice={onChoice} />
          <PaperChoice choice={choice} onChoice={onChoice} />
          <JigChoice jigs={jigs} unit={draft.unit} choice={choice} onChoice={onChoice} />
        </section>
        <FileTable
          files={folderContents(parts, draft.machine.dxf.unit, choice)}
          parts={parts}
          jigs={jigs.filter(({ id }) => includesJig(choice, id)).length}
        />
        <Cautions />
      </div>
      <RunPanel
        run={run}
        since={since}
        reason={reason}
        onStart={onStart}
        onCancel={onCancel}
        onShow={onShow}
      />
    </div>
  );
}

/** Why nothing can be written now; null when it can. */
function whyNot(designed: Designed | null, choice: OutputChoice): string | null {
  if (designed === null) return 'The order is still being worked out.';
  const errors = designed.findings.filter(({ finding }) => finding.severity === 'error').length;
  if (errors > 0) return `${errors === 1 ? 'One fault is' : `${errors} faults are`} in the way.`;
  if (designed.parts.length === 0) return 'There are no parts to write.';
  const wrong = checkChoice(
    choice,
    designed.jigs.map(({ id }) => id),
  );
  return wrong.length === 0 ? null : wrong.map(({ message }) => message).join(' ');
}
