import type { LengthUnit } from '../../core/order/types.ts';
import type { DocumentEdit } from '../document/edit.ts';
import { SourcedRow } from '../document/SourcedRow.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { KindSection } from './KindSection.tsx';
import { MEMBER_LABELS } from './labels.ts';
import { SlideSection } from './SlideSection.tsx';
import { StandardHead } from './StandardHead.tsx';
import { StyleSection } from './StyleSection.tsx';
import { ToleranceTable } from './ToleranceTable.tsx';

interface StandardFormProps {
  readonly edit: DocumentEdit;
  readonly shopUnit: LengthUnit;
  readonly onShopUnit: (unit: LengthUnit) => void;
}

/** All values of a shop standard, section by section. */
export function StandardForm({ edit, shopUnit, onShopUnit }: StandardFormProps) {
  return (
    <div className="document-form">
      <StandardHead edit={edit} shopUnit={shopUnit} onShopUnit={onShopUnit} />
      <StyleSection edit={edit} />
      <section className="document-section" aria-labelledby="standard-members">
        <h3 id="standard-members">Members of a cabinet front</h3>
        <SourcedTable caption="Widths">
          {MEMBER_LABELS.map(([name, label]) => (
            <SourcedRow key={name} edit={edit} path={['members', name]} label={label} />
          ))}
        </SourcedTable>
      </section>
      <SlideSection edit={edit} />
      <KindSection edit={edit} />
      <section className="document-section" aria-labelledby="standard-boxes">
        <h3 id="standard-boxes">Fronts and boxes</h3>
        <SourcedTable caption="Thicknesses">
          <SourcedRow edit={edit} path={['front', 'thickness']} label="Front" />
          <SourcedRow edit={edit} path={['box', 'sideThickness']} label="Box side" />
          <SourcedRow edit={edit} path={['box', 'frontThickness']} label="Box front" />
        </SourcedTable>
        <SourcedTable caption="Limits before a warning">
          <SourcedRow edit={edit} path={['limits', 'smallestGap']} label="Smallest gap" />
          <SourcedRow
            edit={edit}
            path={['limits', 'sizeDifference']}
            label="Given size off the derived one"
          />
        </SourcedTable>
        <ToleranceTable edit={edit} />
      </section>
    </div>
  );
}
