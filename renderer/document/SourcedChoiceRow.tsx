import type { Choice } from '../fields/ChoiceField.tsx';
import { DocumentChoice } from './DocumentChoice.tsx';
import { DocumentField } from './DocumentField.tsx';
import type { DocumentEdit } from './edit.ts';
import type { Path } from './json.ts';

interface SourcedChoiceRowProps {
  readonly edit: DocumentEdit;
  readonly path: Path;
  readonly label: string;
  readonly hint?: string;
  readonly choices: readonly Choice<string>[];
}

/** A row of a table of values whose value is one of a few words. */
export function SourcedChoiceRow({ edit, path, label, hint, choices }: SourcedChoiceRowProps) {
  return (
    <tr>
      <th scope="row">
        {label}
        {hint === undefined ? null : <span className="fields-hint">{hint}</span>}
      </th>
      <td>
        <DocumentChoice
          edit={edit}
          path={[...path, 'value']}
          faultPath={path}
          label={label}
          hideLabel
          choices={choices}
        />
      </td>
      <td>
        <DocumentField edit={edit} path={[...path, 'source']} label={`Source of ${label}`} hideLabel />
      </td>
    </tr>
  );
}

/** Words that stand for themselves. */
export const choicesOf = (words: readonly string[]): readonly Choice<string>[] =>
  words.map((value) => ({ value, label: value }));
