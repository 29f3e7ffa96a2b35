import { useState } from 'react';
import type { DocumentEdit } from '../document/edit.ts';
import { namesAt, textAt, valueAt, withName } from '../document/json.ts';
import { SourcedRow } from '../document/SourcedRow.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { MEMBER_LABELS } from './labels.ts';
import { freeName, PickOne } from './PickOne.tsx';
import { refuseName } from './refuse-name.ts';

/** The kinds of cabinet and what they have that differs from the standard. */
export function KindSection({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const names = namesAt(edit.document, ['cabinetKinds']);
  const index = Math.min(picked, names.length - 1);
  const name = names[index];
  const path = ['cabinetKinds', name ?? ''];
  const slides = namesAt(edit.document, ['slides']);
  return (
    <section className="document-section" aria-labelledby="standard-kinds">
      <h3 id="standard-kinds">Kinds of cabinet</h3>
      <PickOne
        label="Kind"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          const copy = name === undefined ? { members: {} } : valueAt(edit.document, path);
          edit.set(['cabinetKinds', freeName(name ?? 'kind', names)], copy);
          setPicked(names.length);
        }}
        onRemove={() => edit.set(path, undefined)}
      />
      {name === undefined ? (
        <p>There is none: every cabinet is as the standard says.</p>
      ) : (
        <>
          <div className="document-pair">
            <TextField
              label="Name of the kind"
              value={name}
              refuse={(text) => refuseName(text, name, names)}
              onCommit={(text) => edit.replace(withName(edit.document, ['cabinetKinds'], name, text.trim()))}
            />
            <ChoiceField
              label="Slide"
              value={textAt(edit.document, [...path, 'slide'])}
              choices={[
                { value: '', label: 'as the standard says' },
                ...slides.map((value) => ({ value, label: value })),
              ]}
              onChange={(slide) => edit.set([...path, 'slide'], slide === '' ? undefined : slide)}
            />
          </div>
          <SourcedTable caption="Members that differ">
            {MEMBER_LABELS.map(([member, label]) => (
              <SourcedRow
                key={member}
                edit={edit}
                path={[...path, 'members', member]}
                label={label}
                otherwise="as the standard"
              />
            ))}
          </SourcedTable>
        </>
      )}
    </section>
  );
}
