import type { MachineProfile } from '../../core/machine/profile.ts';
import { DocumentChoice } from '../document/DocumentChoice.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';
import { CouponForm } from './CouponForm.tsx';
import { DxfFields } from './DxfFields.tsx';
import { LayerTable } from './LayerTable.tsx';
import { SheetFields } from './SheetFields.tsx';
import { TabFields } from './TabFields.tsx';

const KINDS = [
  { value: 'laser', label: 'laser' },
  { value: 'router', label: 'router' },
  { value: 'none', label: 'none: drawn parts only' },
] as const;

const COMPENSATIONS = [
  { value: 'file', label: 'in the file' },
  { value: 'machine', label: 'by the machine' },
] as const;

const JOINTS = [
  { value: 'key', label: 'keys of the same sheet' },
  { value: 'pin', label: 'round pins' },
] as const;

interface MachineFormProps {
  readonly edit: DocumentEdit;
  /** The profile in force, with which a coupon is cut. */
  readonly machine: MachineProfile;
}

/** All values of a machine profile, section by section. */
export function MachineForm({ edit, machine }: MachineFormProps) {
  const isRouter = edit.text(['kind']) === 'router';
  return (
    <>
      <section className="document-section" aria-labelledby="machine-machine">
        <h3 id="machine-machine">Machine and sheet</h3>
        <div className="document-pair">
          <DocumentField edit={edit} path={['name']} label="Name" />
          <DocumentChoice edit={edit} path={['kind']} label="Kind" choices={KINDS} />
          <DocumentField edit={edit} path={['sheet', 'material']} label="Material of the sheet" />
          <DocumentField
            edit={edit}
            path={['sheet', 'thickness']}
            label="Thickness of the sheet"
            hint="Measure the sheet itself"
            figures
          />
        </div>
        <DocumentField edit={edit} path={['note']} label="Note" long hint="Where the values come from" />
      </section>
      <section className="document-section" aria-labelledby="machine-cut">
        <h3 id="machine-cut">Cut</h3>
        <div className="document-pair">
          <DocumentField
            edit={edit}
            path={['kerf']}
            label={isRouter ? 'Diameter of the tool' : 'Kerf, the full width of the cut'}
            hint={isRouter ? 'As measured' : 'Cut a square: hole minus piece, halved'}
            figures
          />
          <DocumentChoice
            edit={edit}
            path={['compensation']}
            label="The width of the cut is allowed for"
            choices={COMPENSATIONS}
            hint={
              edit.text(['compensation']) === 'file'
                ? 'Lines in the file are the middle of the cut'
                : 'Lines in the file are the finished part'
            }
          />
          <DocumentField
            edit={edit}
            path={['reliefRadius']}
            label="Relief in inside corners, radius"
            hint="Where something square must seat"
            figures
          />
          <DocumentField
            edit={edit}
            path={['capHeight']}
            label="Height of engraved capitals"
            hint="Smaller where there is no room"
            figures
          />
        </div>
      </section>
      <section className="document-section" aria-labelledby="machine-fit">
        <h3 id="machine-fit">Joints</h3>
        <div className="document-pair">
          <DocumentChoice edit={edit} path={['joint']} label="Layers are held by" choices={JOINTS} />
          <DocumentField edit={edit} path={['pinDiameter']} label="Diameter of the pins" figures />
          <DocumentField edit={edit} path={['fit', 'pin']} label="Hole wider than its pin by" figures />
          <DocumentField edit={edit} path={['fit', 'slot']} label="Slot wider than its key by" figures />
        </div>
      </section>
      <SheetFields edit={edit} />
      <TabFields edit={edit} />
      <CouponForm edit={edit} machine={machine} />
      <LayerTable edit={edit} />
      <DxfFields edit={edit} />
    </>
  );
}
