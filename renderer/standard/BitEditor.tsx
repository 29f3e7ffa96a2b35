import { useState } from 'react';
import { NO_SOURCE } from '../../core/rules/no-source.ts';
import type { DocumentEdit } from '../document/edit.ts';
import { itemsAt, textAt } from '../document/json.ts';
import { SourcedRow } from '../document/SourcedRow.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { PickOne } from './PickOne.tsx';

const LIST = ['fastening', 'bits'];

/** The drill bits at hand, from thin to thick, one at a time. */
export function BitEditor({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const bits = itemsAt(edit.document, LIST);
  const index = Math.min(picked, bits.length - 1);
  return (
    <>
      <h4>Drill bits</h4>
      <PickOne
        label="Bit"
        names={bits.map((bit) => textAt(bit, ['value']))}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          // Behind the one that is picked, so that the next thicker size can be written in.
          const copy = bits[index] ?? { value: '', source: NO_SOURCE };
          edit.set(LIST, [...bits.slice(0, index + 1), copy, ...bits.slice(index + 1)]);
          setPicked(index + 1);
        }}
        onRemove={() => edit.set([...LIST, index], undefined)}
        keep={bits.length === 1 ? 'There must be one bit; add another first' : null}
      />
      {index < 0 ? null : (
        <SourcedTable caption="The bit">
          <SourcedRow
            edit={edit}
            path={[...LIST, index]}
            label="Diameter of the bit"
            hint="Bits are listed from thin to thick"
          />
        </SourcedTable>
      )}
    </>
  );
}
