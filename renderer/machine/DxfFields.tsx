import { DocumentChoice } from '../document/DocumentChoice.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { valueAt } from '../document/json.ts';

const VERSIONS = [
  { value: 'R2000', label: 'R2000' },
  { value: 'R12', label: 'R12, for old importers' },
] as const;

const UNITS = [
  { value: 'mm', label: 'millimetres' },
  { value: 'in', label: 'inches' },
] as const;

const SWITCHES = [
  ['repeatFirstPoint', 'Repeat the first point of closed outlines', 'for importers that lose the last side'],
  ['arcsAsLines', 'Draw arcs and circles as lines', 'for importers that ignore bulges'],
] as const;

/** How DXF files are written. */
export function DxfFields({ edit }: { readonly edit: DocumentEdit }) {
  return (
    <section className="document-section" aria-labelledby="machine-dxf">
      <h3 id="machine-dxf">DXF files</h3>
      <div className="document-pair">
        <DocumentChoice edit={edit} path={['dxf', 'version']} label="Version" choices={VERSIONS} />
        <DocumentChoice edit={edit} path={['dxf', 'unit']} label="Unit in the file" choices={UNITS} />
      </div>
      {SWITCHES.map(([name, label, why]) => (
        <label key={name} className="document-switch">
          <input
            type="checkbox"
            checked={valueAt(edit.document, ['dxf', name]) === true}
            onChange={(event) => edit.set(['dxf', name], event.target.checked)}
          />
          <span>
            {label} <span className="fields-hint">{why}</span>
          </span>
        </label>
      ))}
    </section>
  );
}
