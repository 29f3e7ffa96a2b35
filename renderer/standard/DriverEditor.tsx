import { useState } from 'react';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { itemsAt, textAt, withValue } from '../document/json.ts';
import { SourcedRows } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { freeName, PickOne } from './PickOne.tsx';

const LIST = ['fastening', 'driver'];

/** The driver as round parts one behind the other, from the screw's head outwards, one at a time. */
export function DriverEditor({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const parts = itemsAt(edit.document, LIST);
  const index = Math.min(picked, parts.length - 1);
  const names = parts.map((part) => textAt(part, ['name']));
  const path = [...LIST, index];
  return (
    <>
      <h4>Driver</h4>
      <PickOne
        label="Driver part"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          const copy = withValue(parts[index], ['name'], freeName(names[index] ?? 'part', names));
          edit.set(LIST, [...parts.slice(0, index + 1), copy, ...parts.slice(index + 1)]);
          setPicked(index + 1);
        }}
        onRemove={() => edit.set(path, undefined)}
        keep={parts.length === 1 ? 'There must be one part; add another first' : null}
      />
      {index < 0 ? null : (
        <>
          <DocumentField edit={edit} path={[...path, 'name']} label="Name of the driver part" />
          <SourcedTable caption="Sizes of the driver part">
            <SourcedRows
              edit={edit}
              path={path}
              rows={[
                ['radius', 'Radius of the driver part', 'Half of its diameter'],
                ['length', 'Length of the driver part', 'The last one ends behind the hand'],
              ]}
            />
          </SourcedTable>
        </>
      )}
    </>
  );
}
