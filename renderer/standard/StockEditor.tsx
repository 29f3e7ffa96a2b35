import { useState } from 'react';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { itemsAt, textAt, withValue } from '../document/json.ts';
import { choicesOf } from '../document/SourcedChoiceRow.tsx';
import { SourcedRows } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { freeName, PickOne } from './PickOne.tsx';
import { wholeNumber } from '../document/whole-number.ts';

const LIST = ['fastening', 'stock'];

/** The screws in stock, one at a time. */
export function StockEditor({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const stock = itemsAt(edit.document, LIST);
  const index = Math.min(picked, stock.length - 1);
  const names = stock.map((screw) => textAt(screw, ['name']));
  const path = [...LIST, index];
  return (
    <>
      <h4>Stock of screws</h4>
      <PickOne
        label="Screw"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          const name = freeName(names[index] ?? 'screw', names);
          edit.set([...LIST, stock.length], withValue(stock[index], ['name'], name));
          setPicked(stock.length);
        }}
        onRemove={() => edit.set(path, undefined)}
        keep={stock.length === 1 ? 'There must be one screw; add another first' : null}
      />
      {index < 0 ? null : (
        <>
          <div className="document-pair">
            <DocumentField edit={edit} path={[...path, 'name']} faultPath={path} label="Name of the screw" />
            <DocumentField
              edit={edit}
              path={[...path, 'gauge']}
              label="Number of the screw"
              hint="Its trade size, 0 to 24"
              figures
              onText={(text) => edit.set([...path, 'gauge'], wholeNumber(text))}
            />
            <DocumentChoice
              edit={edit}
              path={[...path, 'head']}
              label="Head of the screw"
              choices={choicesOf(['flat', 'pan', 'round washer'])}
            />
          </div>
          <SourcedTable caption="Sizes of the screw">
            <SourcedRows
              edit={edit}
              path={path}
              rows={[
                ['diameter', 'Diameter over the threads'],
                ['root', 'Diameter at the root'],
                ['headDiameter', 'Diameter of the head'],
                ['length', 'Length', 'From under the head; of a flat head, from its top'],
                ['thread', 'Threaded length', 'From the tip'],
              ]}
            />
          </SourcedTable>
        </>
      )}
    </>
  );
}
