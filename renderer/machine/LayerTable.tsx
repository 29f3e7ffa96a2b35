import { OPERATIONS, type Operation } from '../../core/machine/operations.ts';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { wholeNumber } from '../document/whole-number.ts';

const WORDS: Readonly<Record<Operation, string>> = {
  engrave: 'Engrave',
  drill: 'Drill',
  pocket: 'Pocket',
  'cut-inner': 'Cut inside',
  tab: 'Tabs',
  'cut-outer': 'Cut outside',
};

/** The layer of each operation, in running order. */
export function LayerTable({ edit }: { readonly edit: DocumentEdit }) {
  const fault = edit.fault(['layers']);
  return (
    <section className="document-section" aria-labelledby="machine-layers">
      <h3 id="machine-layers">Layers</h3>
      {fault === null ? null : <p className="fields-fault">Fault: {fault}</p>}
      <table className="document-table">
        <thead>
          <tr>
            <th scope="col">In running order</th>
            <th scope="col">Layer</th>
            <th scope="col">DXF colour number</th>
            <th scope="col">SVG colour</th>
          </tr>
        </thead>
        <tbody>
          {OPERATIONS.map((operation) => (
            <tr key={operation}>
              <th scope="row">{WORDS[operation]}</th>
              <td>
                <DocumentField
                  edit={edit}
                  path={['layers', operation, 'name']}
                  label={`Layer of ${WORDS[operation]}`}
                  hideLabel
                  figures
                />
              </td>
              <td>
                <DocumentField
                  edit={edit}
                  path={['layers', operation, 'colorIndex']}
                  label={`DXF colour number of ${WORDS[operation]}`}
                  hideLabel
                  figures
                  onText={(text) => edit.set(['layers', operation, 'colorIndex'], wholeNumber(text))}
                />
              </td>
              <td>
                <DocumentField
                  edit={edit}
                  path={['layers', operation, 'color']}
                  label={`SVG colour of ${WORDS[operation]}`}
                  hideLabel
                  figures
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
