import { useMemo } from 'react';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { writeMachine } from '../../core/machine/write-machine.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import { Cautions } from '../document/Cautions.tsx';
import { DocumentPage } from '../document/DocumentPage.tsx';
import type { OpenText, SaveText } from '../document/files.ts';
import { useEditedDocument, type DocumentKind } from '../document/use-edited-document.ts';
import { editMachine, readEdited, showIn, type EditedMachine } from './edited-machine.ts';
import { useMachineComparison } from '../worker/useComparison.ts';
import { MachineChanges } from './MachineChanges.tsx';
import { MachineForm } from './MachineForm.tsx';
import { shippedMachines } from './shipped.ts';

export interface MachinePageProps {
  readonly machine: MachineProfile;
  /** The order that an edit is tried on. */
  readonly draft: Draft;
  readonly unit: LengthUnit;
  readonly onApply: (machine: MachineProfile) => void;
  /** Absent where there are no files to open or save. */
  readonly onOpen?: OpenText;
  readonly onSave?: SaveText;
}

const KIND: DocumentKind<MachineProfile, EditedMachine> = {
  begin: editMachine,
  showIn,
  read: readEdited,
  parse: parseMachine,
  write: writeMachine,
  kept: new WeakMap(),
};

/** The machine profile: what is on the bed, how wide it cuts, how its files are written. */
export function MachinePage({ machine, draft, unit, onApply, onOpen, onSave }: MachinePageProps) {
  const shipped = useMemo(shippedMachines, []);
  const work = useEditedDocument({ kind: KIND, own: machine, unit, onApply, onOpen, onSave });
  const { tried } = work;
  const comparison = useMachineComparison(draft, tried);
  return (
    <DocumentPage
      title="Machine"
      what="profile"
      shipped={shipped}
      work={work}
      changes={comparison === null ? null : <MachineChanges comparison={comparison} />}
    >
      <MachineForm edit={work.edit} machine={machine} />
      <Cautions />
    </DocumentPage>
  );
}
