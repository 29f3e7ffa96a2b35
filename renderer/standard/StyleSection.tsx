import { useState } from 'react';
import type { DocumentEdit } from '../document/edit.ts';
import { itemsAt, textAt, withValue } from '../document/json.ts';
import { SourcedRow } from '../document/SourcedRow.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import { EDGE_LABELS, SITUATION_LABELS } from './labels.ts';
import { freeName, PickOne } from './PickOne.tsx';

/** The overlay styles, one at a time: what each edge of a front meets. */
export function StyleSection({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const styles = itemsAt(edit.document, ['styles']);
  const index = Math.min(picked, styles.length - 1);
  const names = styles.map((style) => textAt(style, ['name']));
  const path = ['styles', index];
  return (
    <section className="document-section" aria-labelledby="standard-styles">
      <h3 id="standard-styles">Overlay styles</h3>
      <PickOne
        label="Style"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          const name = freeName(names[index] ?? 'style', names);
          edit.set(['styles', styles.length], withValue(styles[index], ['name'], name));
          setPicked(styles.length);
        }}
        onRemove={() => edit.set(path, undefined)}
      />
      {index < 0 ? null : (
        <>
          <DocumentField edit={edit} path={[...path, 'name']} faultPath={path} label="Name of the style" />
          <p className="fields-hint">
            An edge is written as in the order: inset 3/32; lap 1/2; cover stile reveal 1/4; share mid-rail
            gap 1/8; share mid-rail gap 1/8 neighbor 1/8.
          </p>
          <SourcedTable caption="Edges, seen from the front">
            {EDGE_LABELS.flatMap(([edge, label]) =>
              SITUATION_LABELS.map(([situation, words]) => (
                <SourcedRow
                  key={`${edge} ${situation}`}
                  edit={edit}
                  path={[...path, 'edges', edge, situation]}
                  label={`${label} ${words}`}
                />
              )),
            )}
          </SourcedTable>
          <SourcedTable caption="Start low, and bevel">
            {SITUATION_LABELS.map(([situation, words]) => (
              <SourcedRow
                key={situation}
                edit={edit}
                path={[...path, 'startLow', situation]}
                label={`Start-low allowance, bottom ${words}`}
              />
            ))}
            <SourcedRow edit={edit} path={[...path, 'backBevel']} label="Back bevel of the edges" />
          </SourcedTable>
        </>
      )}
    </section>
  );
}
