import type { LengthUnit } from '../../core/order/types.ts';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { UNIT_CHOICES } from '../fields/unit-choices.ts';

const CONSTRUCTIONS = [
  { value: 'face frame', label: 'face frame' },
  { value: 'frameless', label: 'frameless' },
] as const;

interface StandardHeadProps {
  readonly edit: DocumentEdit;
  readonly shopUnit: LengthUnit;
  readonly onShopUnit: (unit: LengthUnit) => void;
}

/** What the standard is called and how the shop builds. */
export function StandardHead({ edit, shopUnit, onShopUnit }: StandardHeadProps) {
  return (
    <section className="document-section" aria-label="The standard">
      <div className="document-pair">
        <DocumentField edit={edit} path={['name']} label="Name" />
        <DocumentChoice edit={edit} path={['construction']} label="Construction" choices={CONSTRUCTIONS} />
        <ChoiceField
          label="The shop reads lengths in"
          value={shopUnit}
          choices={UNIT_CHOICES}
          onChange={onShopUnit}
        />
      </div>
      <DocumentField edit={edit} path={['note']} label="Note" long />
    </section>
  );
}
