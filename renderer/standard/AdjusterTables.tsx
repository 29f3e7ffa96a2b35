import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import type { Path } from '../document/json.ts';
import { SourcedRows } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';

/** The adjusters of a slide, and which way is plus. */
const ADJUSTERS = [
  ['height', 'Height adjuster', 'plus raises the front'],
  ['side', 'Side adjuster', 'plus moves the front to the right'],
  ['depth', 'Depth adjuster', 'plus moves the front out'],
  ['tilt', 'Tilt adjuster', 'plus leans the top edge out, measured there'],
] as const;

interface AdjusterTablesProps {
  readonly edit: DocumentEdit;
  /** Of the slide. */
  readonly path: Path;
}

/** What each adjuster of a slide can do, from where it moves nothing; both ends 0 where there is none. */
export function AdjusterTables({ edit, path }: AdjusterTablesProps) {
  return (
    <>
      {ADJUSTERS.map(([name, label, plus]) => {
        const own = [...path, 'adjusters', name];
        return (
          <SourcedTable key={name} caption={`${label}: ${plus}`}>
            <SourcedRows
              edit={edit}
              path={own}
              rows={[
                ['least', `${label}, least`, '0 or less'],
                ['most', `${label}, most`, '0 or more; both 0 where there is none'],
                ['step', `${label}, one step`, '0 where the sheet does not say'],
              ]}
            />
          </SourcedTable>
        );
      })}
      <div className="document-pair">
        {ADJUSTERS.map(([name, label]) => (
          <DocumentField
            key={name}
            edit={edit}
            path={[...path, 'adjusters', name, 'stepName']}
            label={`${label}, a step is called`}
          />
        ))}
      </div>
    </>
  );
}
