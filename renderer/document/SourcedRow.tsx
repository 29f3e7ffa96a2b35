import { NO_SOURCE } from '../../core/rules/no-source.ts';
import { DocumentField } from './DocumentField.tsx';
import type { DocumentEdit } from './edit.ts';
import { valueAt, type Path } from './json.ts';

interface SourcedRowProps {
  readonly edit: DocumentEdit;
  readonly path: Path;
  /** `Stile` */
  readonly label: string;
  readonly hint?: string;
  /** May be empty, which takes it out of the document; then this is what counts. */
  readonly otherwise?: string;
}

/** A row of a table of values: what it is, the value, and where it comes from. */
export function SourcedRow({ edit, path, label, hint, otherwise }: SourcedRowProps) {
  const isThere = valueAt(edit.document, path) !== undefined;
  const write = (text: string): void => {
    if (otherwise !== undefined && text === '') edit.set(path, undefined);
    else if (isThere) edit.set([...path, 'value'], text);
    else edit.set(path, { value: text, source: NO_SOURCE });
  };
  return (
    <tr>
      <th scope="row">
        {label}
        {hint === undefined ? null : <span className="fields-hint">{hint}</span>}
      </th>
      <td>
        <DocumentField
          edit={edit}
          path={[...path, 'value']}
          faultPath={path}
          label={label}
          hideLabel
          figures
          {...(otherwise === undefined ? {} : { placeholder: otherwise })}
          onText={write}
        />
      </td>
      <td>
        {isThere ? (
          <DocumentField edit={edit} path={[...path, 'source']} label={`Source of ${label}`} hideLabel />
        ) : null}
      </td>
    </tr>
  );
}
