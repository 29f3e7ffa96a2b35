import { useDeferredValue, useMemo, useState } from 'react';
import { sameData } from '../../core/collections/same-data.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { compareFits } from '../../core/session/compare-fits.ts';
import { ChangesPanel } from '../document/ChangesPanel.tsx';
import '../document/document.css';
import { documentEdit } from '../document/edit.ts';
import type { OpenText, SaveText } from '../document/files.ts';
import { jsonOf } from '../document/json-of.ts';
import { ShippedChoice } from '../document/ShippedChoice.tsx';
import { editStandard, readEdited, showIn, type EditedStandard } from './edited-standard.ts';
import { FitChanges } from './FitChanges.tsx';
import { shippedStandards } from './shipped.ts';
import { StandardForm } from './StandardForm.tsx';

export interface StandardPageProps {
  readonly standard: ShopStandard;
  /** The order that an edit is tried on. */
  readonly draft: Draft;
  readonly unit: LengthUnit;
  readonly onApply: (standard: ShopStandard) => void;
  /** Absent where there are no files to open or save. */
  readonly onOpen?: OpenText;
  readonly onSave?: SaveText;
}

/** The shop standard: every value with its source, and what the order would make of a change. */
export function StandardPage({ standard, draft, unit, onApply, onOpen, onSave }: StandardPageProps) {
  const [work, setWork] = useState<EditedStandard | null>(null);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const shipped = useMemo(shippedStandards, []);
  const edited = useMemo(
    () => (work === null ? editStandard(standard, unit) : showIn(work, unit)),
    [work, standard, unit],
  );
  const { value, findings } = useMemo(() => readEdited(edited), [edited]);
  const isChanged = value === null || !sameData(value, standard);

  // Comparing waits for a pause in the typing.
  const tried = useDeferredValue(isChanged ? value : null);
  const comparison = useMemo(
    () => (tried === null ? null : compareFits(draft, { ...draft, standard: tried })),
    [draft, tried],
  );
  const edit = documentEdit(edited.document, findings, (document) => setWork({ ...edited, document }));

  const start = (from: ShopStandard): void => {
    setRefused([]);
    setWork(editStandard(from, unit));
  };
  const open = async (): Promise<void> => {
    const file = await onOpen?.();
    if (file === undefined || file === null) return;
    const read = parseStandard(jsonOf(file.text), file.name);
    if (read.value === null) setRefused(read.findings.map(({ message }) => message));
    else start(read.value);
  };
  return (
    <div className="document">
      <div className="document-head">
        <h2>Shop standard</h2>
        <ShippedChoice
          what="standard"
          shipped={shipped}
          onStart={start}
          {...(onOpen === undefined ? {} : { onOpen: () => void open() })}
          {...(onSave === undefined || value === null
            ? {}
            : { onSave: () => onSave(`${value.name}.json`, writeStandard(value)) })}
        />
      </div>
      <StandardForm
        edit={edit}
        shopUnit={edited.shopUnit}
        onShopUnit={(shopUnit) => setWork({ ...edited, shopUnit })}
      />
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
        {comparison === null ? null : <FitChanges comparison={comparison} unit={unit} />}
      </ChangesPanel>
    </div>
  );
}
