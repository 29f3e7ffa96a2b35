import { useState } from 'react';
import { NO_SOURCE } from '../../core/rules/no-source.ts';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { namesAt, textAt, valueAt, withName } from '../document/json.ts';
import { SourcedRows } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { freeName, PickOne } from './PickOne.tsx';
import { refuseName } from './refuse-name.ts';

/** The sorts of pulls that a row of the order may begin its pull with, one at a time. */
export function PullSection({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const names = namesAt(edit.document, ['pulls']);
  const index = Math.min(picked, names.length - 1);
  const name = names[index];
  const path = ['pulls', name ?? ''];
  const holes = textAt(edit.document, [...path, 'holes']);
  return (
    <section className="document-section" aria-labelledby="standard-pulls">
      <h3 id="standard-pulls">Pulls</h3>
      <PickOne
        label="Pull"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          const copy = name === undefined ? FIRST : valueAt(edit.document, path);
          edit.set(['pulls', freeName(name ?? 'bar', names, '-')], copy);
          setPicked(names.length);
        }}
        onRemove={() => edit.set(path, undefined)}
      />
      {name === undefined ? (
        <p>There is none: what an order says of pulls is kept as text.</p>
      ) : (
        <>
          <div className="document-pair">
            <TextField
              label="Name of the pull"
              hint="The word that a pull cell begins with"
              value={name}
              refuse={(text) => refuseWord(text) ?? refuseName(text, name, names)}
              onCommit={(text) => edit.replace(withName(edit.document, ['pulls'], name, text.trim()))}
            />
            <ChoiceField
              label="Holes of the pull"
              value={holes}
              choices={[
                { value: '1', label: 'one' },
                { value: '2', label: 'two' },
              ]}
              onChange={(count) => edit.set([...path, 'holes'], Number(count))}
            />
            <DocumentChoice
              edit={edit}
              path={[...path, 'height', 'from']}
              label="Height is measured from"
              choices={[
                { value: 'middle', label: 'the middle of the front, upwards' },
                { value: 'top', label: 'the top edge, downwards' },
              ]}
            />
          </div>
          <SourcedTable caption="Places and sizes of the pull">
            <SourcedRows
              edit={edit}
              path={path}
              rows={[
                ['centers', 'Distance of two holes', 'Where the order gives none; 0 for one hole'],
                ['holeDiameter', 'Diameter of the hole'],
                [['height', 'distance'], 'Height of the pull'],
                ['pairFrom', 'Two pulls from a width of', 'Each at a quarter of the width'],
              ]}
            />
          </SourcedTable>
        </>
      )}
    </section>
  );
}

const unsourced = (value: string) => ({ value, source: NO_SOURCE });

/** What stands in a pull that is the first of all. */
const FIRST = {
  holes: 2,
  centers: unsourced('96 mm'),
  holeDiameter: unsourced('5 mm'),
  height: { from: 'middle', distance: unsourced('0 mm') },
  pairFrom: unsourced('30 in'),
} as const;

const refuseWord = (text: string): string | null =>
  /[\s,;]/.test(text.trim()) ? 'a pull cell begins with it, so it is one word' : null;
