import { useState } from 'react';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { itemsAt, textAt, valueAt, withValue } from '../document/json.ts';
import { wholeNumber } from '../document/whole-number.ts';

const STOCK = ['sheets', 'stock'] as const;

const TURNS = [
  { value: 'quarter', label: 'by quarters' },
  { value: 'half', label: 'end for end: the grain stays' },
  { value: 'none', label: 'not at all' },
] as const;

/** The sheets in stock, and how parts are laid out on them. */
export function SheetFields({ edit }: { readonly edit: DocumentEdit }) {
  return (
    <section className="document-section" aria-labelledby="machine-sheets">
      <h3 id="machine-sheets">Sheets in stock</h3>
      <StockTable edit={edit} />
      <div className="document-pair">
        <DocumentField
          edit={edit}
          path={['sheets', 'edgeMargin']}
          label="Margin at the edges of a sheet"
          figures
        />
        <DocumentField
          edit={edit}
          path={['sheets', 'spacing']}
          label="Between two parts"
          hint="As wide as the cut, or more"
          figures
        />
        <DocumentChoice edit={edit} path={['sheets', 'turn']} label="Parts may be turned" choices={TURNS} />
        <DocumentField
          edit={edit}
          path={['sheets', 'effort']}
          label="Steps of the search for a better layout"
          hint="0 takes the first good one"
          figures
          onText={(text) => edit.set(['sheets', 'effort'], wholeNumber(text))}
        />
      </div>
    </section>
  );
}

function StockTable({ edit }: { readonly edit: DocumentEdit }) {
  const stock = itemsAt(edit.document, STOCK);
  const [added, setAdded] = useState(0);
  const add = (): void => {
    const names = new Set(stock.map((sheet) => textAt(sheet, ['name'])));
    const name = ['offcut', ...stock.map((_, index) => `offcut ${index + 2}`)].find(
      (free) => !names.has(free),
    );
    const last = withValue(stock.at(-1), ['name'], name ?? 'sheet');
    edit.set([...STOCK, stock.length], withValue(withValue(last, ['offcut'], true), ['count'], 1));
    setAdded(added + 1);
  };
  const fault = edit.fault(STOCK);
  return (
    <>
      {fault === null ? null : <p className="fields-fault">Fault: {fault}</p>}
      <table className="document-table">
        <thead>
          <tr>
            <th scope="col">Sheet</th>
            <th scope="col">Width</th>
            <th scope="col">Height</th>
            <th scope="col">How many</th>
            <th scope="col">Offcut</th>
            <th scope="col">
              <span className="fields-hint">Take out</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {stock.map((_, index) => {
            const path = [...STOCK, index];
            const which = `of sheet ${index + 1}`;
            return (
              // Names change while they are typed.
              // oxlint-disable-next-line react/no-array-index-key
              <tr key={`${index} ${added}`}>
                <td>
                  <DocumentField
                    edit={edit}
                    path={[...path, 'name']}
                    faultPath={path}
                    label={`Name ${which}`}
                    hideLabel
                  />
                </td>
                <td>
                  <DocumentField
                    edit={edit}
                    path={[...path, 'width']}
                    label={`Width ${which}`}
                    hideLabel
                    figures
                  />
                </td>
                <td>
                  <DocumentField
                    edit={edit}
                    path={[...path, 'height']}
                    label={`Height ${which}`}
                    hideLabel
                    figures
                  />
                </td>
                <td>
                  <DocumentField
                    edit={edit}
                    path={[...path, 'count']}
                    label={`How many ${which}`}
                    hideLabel
                    figures
                    placeholder="any number"
                    onText={(text) =>
                      edit.set([...path, 'count'], text.trim() === '' ? null : wholeNumber(text))
                    }
                  />
                </td>
                <td>
                  <input
                    type="checkbox"
                    aria-label={`Offcut ${which}`}
                    checked={valueAt(edit.document, [...path, 'offcut']) === true}
                    onChange={(event) => edit.set([...path, 'offcut'], event.target.checked)}
                  />
                </td>
                <td>
                  <button
                    type="button"
                    aria-label={`Take out sheet ${index + 1}`}
                    disabled={stock.length === 1}
                    onClick={() => edit.set(path, undefined)}
                  >
                    Take out
                  </button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p>
        <button type="button" onClick={add}>
          Add a sheet or offcut
        </button>
      </p>
    </>
  );
}
