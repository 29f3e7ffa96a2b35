import { useState } from 'react';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { namesAt, textAt, valueAt, withName, withValue, type Json } from '../document/json.ts';
import { SourcedRows } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { TextField } from '../fields/TextField.tsx';
import { AdjusterTables } from './AdjusterTables.tsx';
import { SLIDE_LABELS } from './labels.ts';
import { freeName, PickOne } from './PickOne.tsx';
import { refuseName } from './refuse-name.ts';

/** The slides, one at a time, and the one that a cabinet has unless its kind says otherwise. */
export function SlideSection({ edit }: { readonly edit: DocumentEdit }) {
  const [picked, setPicked] = useState(0);
  const names = namesAt(edit.document, ['slides']);
  const index = Math.min(picked, names.length - 1);
  const name = names[index] ?? '';
  const users = usersOf(edit.document, name);
  return (
    <section className="document-section" aria-labelledby="standard-slides">
      <h3 id="standard-slides">Slides</h3>
      <DocumentChoice
        edit={edit}
        path={['slide']}
        label="Slide of a cabinet, unless its kind says otherwise"
        choices={names.map((value) => ({ value, label: value }))}
      />
      <PickOne
        label="Slide"
        names={names}
        picked={index}
        onPick={setPicked}
        onAdd={() => {
          edit.set(['slides', freeName(name, names)], valueAt(edit.document, ['slides', name]));
          setPicked(names.length);
        }}
        onRemove={() => edit.set(['slides', name], undefined)}
        keep={users ? 'A cabinet uses this slide; choose another there first' : null}
      />
      <TextField
        label="Name of the slide"
        value={name}
        refuse={(text) => refuseName(text, name, names)}
        onCommit={(text) => edit.replace(renameSlide(edit.document, name, text.trim()))}
      />
      <SourcedTable caption="Room that it needs">
        <SourcedRows edit={edit} path={['slides', name]} rows={SLIDE_LABELS} />
      </SourcedTable>
      <AdjusterTables edit={edit} path={['slides', name]} />
    </section>
  );
}

const kindSlides = (document: Json): readonly (readonly [kind: string, slide: string])[] =>
  namesAt(document, ['cabinetKinds']).map((kind) => [
    kind,
    textAt(document, ['cabinetKinds', kind, 'slide']),
  ]);

const usersOf = (document: Json, slide: string): boolean =>
  textAt(document, ['slide']) === slide || kindSlides(document).some(([, own]) => own === slide);

/** Whoever uses the slide goes on using it. */
function renameSlide(document: Json, name: string, newName: string): Json {
  let renamed = withName(document, ['slides'], name, newName);
  if (textAt(document, ['slide']) === name) renamed = withValue(renamed, ['slide'], newName);
  for (const [kind, slide] of kindSlides(document)) {
    if (slide === name) renamed = withValue(renamed, ['cabinetKinds', kind, 'slide'], newName);
  }
  return renamed;
}
