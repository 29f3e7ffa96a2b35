import { useDeferredValue, useMemo, useState } from 'react';
import { sameData } from '../../core/collections/same-data.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { writeMachine } from '../../core/machine/write-machine.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import { compareMachines } from '../../core/session/compare-machines.ts';
import { Cautions } from '../document/Cautions.tsx';
import { ChangesPanel } from '../document/ChangesPanel.tsx';
import '../document/document.css';
import { documentEdit } from '../document/edit.ts';
import type { OpenText, SaveText } from '../document/files.ts';
import { jsonOf } from '../document/json-of.ts';
import { ShippedChoice } from '../document/ShippedChoice.tsx';
import { editMachine, readEdited, showIn, type EditedMachine } from './edited-machine.ts';
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

/** The machine profile: what is on the bed, how wide it cuts, how its files are written. */
export function MachinePage({ machine, draft, unit, onApply, onOpen, onSave }: MachinePageProps) {
  const [work, setWork] = useState<EditedMachine | null>(null);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const shipped = useMemo(shippedMachines, []);
  const edited = useMemo(
    () => (work === null ? editMachine(machine, unit) : showIn(work, unit)),
    [work, machine, unit],
  );
  const { value, findings } = useMemo(() => readEdited(edited), [edited]);
  const isChanged = value === null || !sameData(value, machine);

  // Comparing waits for a pause in the typing.
  const tried = useDeferredValue(isChanged ? value : null);
  const comparison = useMemo(
    () => (tried === null ? null : compareMachines({ ...draft, machine }, tried)),
    [draft, machine, tried],
  );
  const edit = documentEdit(edited.document, findings, (document) => setWork({ ...edited, document }));

  const start = (from: MachineProfile): void => {
    setRefused([]);
    setWork(editMachine(from, unit));
  };
  const open = async (): Promise<void> => {
    const file = await onOpen?.();
    if (file === undefined || file === null) return;
    const read = parseMachine(jsonOf(file.text), file.name);
    if (read.value === null) setRefused(read.findings.map(({ message }) => message));
    else start(read.value);
  };
  return (
    <div className="document">
      <div className="document-head">
        <h2>Machine</h2>
        <ShippedChoice
          what="profile"
          shipped={shipped}
          onStart={start}
          {...(onOpen === undefined ? {} : { onOpen: () => void open() })}
          {...(onSave === undefined || value === null
            ? {}
            : { onSave: () => onSave(`${value.name}.json`, writeMachine(value)) })}
        />
      </div>
      <div className="document-form">
        <MachineForm edit={edit} />
        <Cautions />
      </div>
      <ChangesPanel
        isChanged={isChanged}
        faults={refused.length > 0 ? refused : findings.map(({ message }) => message)}
        onApply={() => {
          if (value === null) return;
          onApply(value);
          setWork(null);
        }}
        onDrop={() => {
          setRefused([]);
          setWork(null);
        }}
      >
        {comparison === null ? null : <MachineChanges comparison={comparison} />}
      </ChangesPanel>
    </div>
  );
}
