import type { DocumentEdit } from '../document/edit.ts';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import { TOLERANCE_LABELS } from './labels.ts';

const DISTRIBUTIONS = [
  { value: 'normal', label: 'normal' },
  { value: 'uniform', label: 'uniform' },
  { value: 'triangular', label: 'triangular' },
] as const;

/** How far each thing may be off, and how its errors are spread. */
export function ToleranceTable({ edit }: { readonly edit: DocumentEdit }) {
  return (
    <table className="document-table">
      <caption>Tolerances, plus or minus</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Value</th>
          <th scope="col">Spread</th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      <tbody>
        {TOLERANCE_LABELS.map(([name, label]) => (
          <tr key={name}>
            <th scope="row">{label}</th>
            <td>
              <DocumentField
                edit={edit}
                path={['tolerances', name, 'value']}
                label={`${label}, tolerance`}
                hideLabel
                figures
              />
            </td>
            <td>
              <DocumentChoice
                edit={edit}
                path={['tolerances', name, 'distribution']}
                label={`${label}, spread of its errors`}
                hideLabel
                choices={DISTRIBUTIONS}
              />
            </td>
            <td>
              <DocumentField
                edit={edit}
                path={['tolerances', name, 'source']}
                label={`Source of ${label}, tolerance`}
                hideLabel
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
