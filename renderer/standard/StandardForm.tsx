import type { LengthUnit } from '../../core/order/types.ts';
import type { DocumentEdit } from '../document/edit.ts';
import { SourcedRow } from '../document/SourcedRow.tsx';
import { SourcedTable } from '../document/SourcedTable.tsx';
import { FasteningSection } from './FasteningSection.tsx';
import { KindSection } from './KindSection.tsx';
import { MEMBER_LABELS } from './labels.ts';
import { PullSection } from './PullSection.tsx';
import { SlideSection } from './SlideSection.tsx';
import { StandardHead } from './StandardHead.tsx';
import { StyleSection } from './StyleSection.tsx';
import { ToleranceTable } from './ToleranceTable.tsx';
import { WoodSection } from './WoodSection.tsx';

interface StandardFormProps {
  readonly edit: DocumentEdit;
  readonly shopUnit: LengthUnit;
  readonly onShopUnit: (unit: LengthUnit) => void;
}

/** All values of a shop standard, section by section. */
export function StandardForm({ edit, shopUnit, onShopUnit }: StandardFormProps) {
  return (
    <>
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
          <SourcedRow edit={edit} path={['box', 'bottom', 'thickness']} label="Box bottom" />
        </SourcedTable>
        <SourcedTable caption="The box behind its front">
          <SourcedRow
            edit={edit}
            path={['box', 'depth']}
            label="Box depth"
            hint="From the back of the front to the back of the box, where the order gives none"
          />
          <SourcedRow
            edit={edit}
            path={['box', 'bottom', 'raised']}
            label="Box bottom raised by"
            hint="From the lower edge of the sides to its underside"
          />
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
      <WoodSection edit={edit} />
      <FasteningSection edit={edit} />
      <PullSection edit={edit} />
    </>
  );
}
