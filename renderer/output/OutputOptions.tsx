import type { Registration } from '../../core/jigs/plan-types.ts';
import type { Draft } from '../../core/project/draft.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';

const REGISTRATIONS = [
  { value: 'edge', label: 'an edge at a time: bottom fences and side spacers' },
  { value: 'corner', label: 'a corner at once: corner fences in pairs' },
] as const;

interface OutputOptionsProps {
  readonly draft: Draft;
  readonly onRegistration: (registration: Registration) => void;
  readonly onMachine: () => void;
}

/** How boxes are set, and what the machine profile says of the files. */
export function OutputOptions({ draft, onRegistration, onMachine }: OutputOptionsProps) {
  const { name, dxf, compensation, sheet } = draft.machine;
  return (
    <section className="document-section" aria-labelledby="output-options">
      <h3 id="output-options">How</h3>
      <ChoiceField
        label="Jigs set the box by"
        value={draft.registration}
        choices={REGISTRATIONS}
        onChange={onRegistration}
      />
      <dl className="output-facts">
        <div>
          <dt>Machine</dt>
          <dd>{name}</dd>
        </div>
        <div>
          <dt>Sheet</dt>
          <dd>{sheet.material}</dd>
        </div>
        <div>
          <dt>DXF</dt>
          <dd>
            {dxf.version}, in {dxf.unit === 'mm' ? 'millimetres' : 'inches'}
          </dd>
        </div>
        <div>
          <dt>Lines are</dt>
          <dd>{compensation === 'file' ? 'the middle of the cut' : 'the finished part'}</dd>
        </div>
      </dl>
      <button type="button" onClick={onMachine}>
        Change the machine profile
      </button>
    </section>
  );
}
