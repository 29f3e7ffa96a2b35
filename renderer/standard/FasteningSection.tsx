import type { DocumentEdit } from '../document/edit.ts';
import { SourcedChoiceRow } from '../document/SourcedChoiceRow.tsx';
import { SourcedRows, type RowLabel } from '../document/SourcedRows.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { BitEditor } from './BitEditor.tsx';
import { DriverEditor } from './DriverEditor.tsx';
import { StockEditor } from './StockEditor.tsx';

const PATH = ['fastening'];

const LIMITS: readonly RowLabel[] = [
  ['cover', 'Cover', 'Least wood between the tip and the face'],
  ['bite', 'Bite', 'Least length of screw in the front'],
  ['edgeMargin', 'Wood beside the thread', 'To the edge of the wood that it is in'],
  ['headRoom', 'Room around the head', "To the box's side, bottom and edges"],
  ['pullRoom', "Wood beside a pull's hole"],
  ['driverRoom', 'Room around the driver'],
];

const PLACES: readonly RowLabel[] = [
  [['place', 'side'], 'From the box side, inside', 'Where nothing is against it'],
  [['place', 'height'], 'From the box bottom or top, inside'],
  ['spacing', 'Largest distance of two screws'],
  ['largestAngle', 'Largest angle', 'A screw leans no further'],
  ['angleStep', 'Step of the angles', 'Angles of guides are whole multiples of it'],
];

const LOAD: readonly RowLabel[] = [
  ['pull', 'Pull on a front', 'What its screws hold together; with its unit: 50 lbf or 222 N'],
  ['safety', 'Safety factor', "Divides the handbook's capacity, which is an ultimate one"],
];

const GUIDE: readonly RowLabel[] = [
  [['guide', 'boreFit'], 'Bore wider than its bit by'],
  [['guide', 'boreLength'], 'Least length of the bore', 'In diameters of the bit'],
  [['guide', 'bushing'], 'Outer diameter of the bushing', '0 where the bit runs in the plate'],
];

/** How fronts are screwed to boxes. */
export function FasteningSection({ edit }: { readonly edit: DocumentEdit }) {
  return (
    <section className="document-section" aria-labelledby="standard-fastening">
      <h3 id="standard-fastening">Screws</h3>
      <StockEditor edit={edit} />
      <BitEditor edit={edit} />
      <SourcedTable caption="Where screws go">
        <SourcedRows edit={edit} path={PATH} rows={PLACES} />
        <SourcedChoiceRow
          edit={edit}
          path={[...PATH, 'holes']}
          label="Holes"
          choices={[
            { value: 'clearance in the box front', label: 'clearance in the box front, pilot in the front' },
            { value: 'pilot through both', label: 'pilot through both' },
          ]}
        />
      </SourcedTable>
      <SourcedTable caption="Limits of a screw">
        <SourcedRows edit={edit} path={PATH} rows={LIMITS} />
      </SourcedTable>
      <SourcedTable caption="Load">
        <SourcedRows edit={edit} path={PATH} rows={LOAD} />
      </SourcedTable>
      <DriverEditor edit={edit} />
      <SourcedTable caption="Drill guides">
        <SourcedRows edit={edit} path={PATH} rows={GUIDE} />
      </SourcedTable>
    </section>
  );
}
