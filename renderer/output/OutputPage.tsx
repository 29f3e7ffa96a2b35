import { folderContents } from '../../core/files/folder-contents.ts';
import type { Registration } from '../../core/jigs/plan-types.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { Designed } from '../../core/session/types.ts';
import { Cautions } from '../document/Cautions.tsx';
import '../document/document.css';
import { Blockers } from './Blockers.tsx';
import { FileTable } from './FileTable.tsx';
import { OutputOptions } from './OutputOptions.tsx';
import './output.css';
import { RunPanel } from './RunPanel.tsx';
import type { OutputRun } from './run.ts';

export interface OutputPageProps {
  readonly draft: Draft;
  /** Null until the draft has been designed. */
  readonly designed: Designed | null;
  readonly run: OutputRun;
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
  const { draft, designed, run, onStart, onCancel, onShow, onRegistration, onMachine, onRow } = props;
  const findings = designed?.findings ?? [];
  const errors = findings.filter(({ finding }) => finding.severity === 'error');
  const parts = designed?.parts ?? [];
  const reason = whyNot(designed, errors.length);
  return (
    <div className="document">
      <div className="document-head">
        <h2>Files out</h2>
      </div>
      <div className="document-form">
        <Blockers findings={findings} draft={draft} onRow={onRow} />
        <OutputOptions draft={draft} onRegistration={onRegistration} onMachine={onMachine} />
        <FileTable
          files={folderContents(parts, draft.machine.dxf.unit)}
          parts={parts}
          jigs={designed?.jigs.length ?? 0}
        />
        <Cautions />
      </div>
      <RunPanel run={run} reason={reason} onStart={onStart} onCancel={onCancel} onShow={onShow} />
    </div>
  );
}

/** Why nothing can be written now; null when it can. */
function whyNot(designed: Designed | null, errors: number): string | null {
  if (designed === null) return 'The order is still being worked out.';
  if (errors > 0) return `${errors === 1 ? 'One fault is' : `${errors} faults are`} in the way.`;
  return designed.parts.length === 0 ? 'There are no parts to write.' : null;
}
