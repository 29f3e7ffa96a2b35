import { useState } from 'react';
import type { DocumentEdit } from '../document/edit.ts';
import { namesAt, textAt, valueAt, withName, withValue, type Json } from '../document/json.ts';
import { SourcedRows } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { freeName, PickOne } from './PickOne.tsx';
import { refuseName } from './refuse-name.ts';

const IN_USE = ['front', 'wood', 'species', 'value'];

/** The woods that rows of an order may name, one at a time. */
export function SpeciesEditor({ edit }: { readonly edit: DocumentEdit }) {
  const names = namesAt(edit.document, ['species']);
  const [picked, setPicked] = useState(() => Math.max(0, names.indexOf(textAt(edit.document, IN_USE))));
  const index = Math.min(picked, names.length - 1);
  const name = names[index];
  const path = ['species', name ?? ''];
  const isInUse = name !== undefined && textAt(edit.document, IN_USE) === name;
  return (
    <>
      <h4>Species</h4>
      <PickOne
        label="Species"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          const copy = name === undefined ? {} : valueAt(edit.document, path);
          edit.set(['species', freeName(name ?? 'species', names)], copy);
          setPicked(names.length);
        }}
        onRemove={() => edit.set(path, undefined)}
        keep={isInUse ? 'Fronts are made of this species; choose another there first' : null}
      />
      {name === undefined ? null : (
        <>
          <div className="document-pair">
            <TextField
              label="Name of the species"
              value={name}
              refuse={(text) => refuseName(text, name, names)}
              onCommit={(text) => edit.replace(renamed(edit.document, name, text.trim()))}
            />
            <ChoiceField
              label="It is"
              value={valueAt(edit.document, [...path, 'softwood']) === true ? 'softwood' : 'hardwood'}
              choices={[
                { value: 'hardwood', label: 'a hardwood' },
                { value: 'softwood', label: 'a softwood' },
              ]}
              hint="Pilot holes are smaller in softwoods"
              onChange={(sort) => edit.set([...path, 'softwood'], sort === 'softwood')}
            />
          </div>
          <SourcedTable caption="As the handbook tables it">
            <SourcedRows
              edit={edit}
              path={path}
              rows={[
                ['specificGravity', 'Specific gravity', 'Ovendry weight, volume at 12 % moisture'],
                ['radial', 'Radial movement', 'Of its width, for each percent of moisture: C_R, quartersawn'],
                ['tangential', 'Tangential movement', 'C_T, flatsawn'],
              ]}
            />
          </SourcedTable>
        </>
      )}
    </>
  );
}

/** Fronts that are made of the species go on being so. */
function renamed(document: Json, name: string, newName: string): Json {
  const other = withName(document, ['species'], name, newName);
  return textAt(document, IN_USE) === name ? withValue(other, IN_USE, newName) : other;
}
