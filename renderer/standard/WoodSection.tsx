import type { DocumentEdit } from '../document/edit.ts';
import { namesAt } from '../document/json.ts';
import { choicesOf, SourcedChoiceRow } from '../document/SourcedChoiceRow.tsx';
import { SourcedRows, type RowLabel } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { SpeciesEditor } from './SpeciesEditor.tsx';

const WOOD = ['front', 'wood'];

const AIR: readonly RowLabel[] = [
  [['dry', 'humidity'], 'Driest air, humidity', 'In the house, over the year'],
  [['dry', 'temperature'], 'Driest air, temperature', 'With its unit: 70 F or 21 C'],
  [['damp', 'humidity'], 'Dampest air, humidity'],
  [['damp', 'temperature'], 'Dampest air, temperature'],
  [['shop', 'humidity'], 'Air of the shop, humidity', 'When the fronts are fitted'],
  [['shop', 'temperature'], 'Air of the shop, temperature'],
];

const GROOVE: readonly RowLabel[] = [
  ['depth', 'Depth of the groove', 'From the inner edge of stile or rail into its width'],
  ['behind', 'Wood behind the groove', 'From the back of the front'],
  ['width', 'Width of the groove', 'Through the thickness'],
];

/** What fronts are made of, the air that they live in, and the woods that there are. */
export function WoodSection({ edit }: { readonly edit: DocumentEdit }) {
  return (
    <section className="document-section" aria-labelledby="standard-wood">
      <h3 id="standard-wood">Wood and seasons</h3>
      <SourcedTable caption="Fronts, unless a row of the order says otherwise">
        <SourcedChoiceRow
          edit={edit}
          path={[...WOOD, 'species']}
          label="Wood of fronts"
          choices={choicesOf(namesAt(edit.document, ['species']))}
        />
        <SourcedChoiceRow
          edit={edit}
          path={[...WOOD, 'slab']}
          label="Slab fronts"
          hint="Solid wood moves with the seasons, panels stay"
          choices={[
            { value: 'solid', label: 'solid wood' },
            { value: 'panel', label: 'panels' },
          ]}
        />
        <SourcedChoiceRow
          edit={edit}
          path={[...WOOD, 'grain']}
          label="Grain of a solid slab"
          choices={choicesOf(['horizontal', 'vertical'])}
        />
        <SourcedChoiceRow
          edit={edit}
          path={[...WOOD, 'sawn']}
          label="Boards are"
          hint="Flatsawn boards move most"
          choices={choicesOf(['flatsawn', 'quartersawn'])}
        />
      </SourcedTable>
      <SourcedTable caption="Air">
        <SourcedRows edit={edit} path={WOOD} rows={AIR} />
      </SourcedTable>
      <SourcedTable caption="Groove of a five-piece front">
        <SourcedRows edit={edit} path={['front', 'groove']} rows={GROOVE} />
      </SourcedTable>
      <SpeciesEditor edit={edit} />
    </section>
  );
}
