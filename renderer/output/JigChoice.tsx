import { includesJig, type OutputChoice } from '../../core/files/output-choice.ts';
import { settingsText } from '../../core/jigs/settings-text.ts';
import type { Jig } from '../../core/jigs/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';

interface JigChoiceProps {
  readonly jigs: readonly Jig[];
  readonly unit: LengthUnit;
  readonly choice: OutputChoice;
  readonly onChoice: (choice: OutputChoice) => void;
}

/** All jigs, or those that are picked: one that was lost is cut again without the others. */
export function JigChoice({ jigs, unit, choice, onChoice }: JigChoiceProps) {
  const picked = choice.jigs === 'all' ? [] : choice.jigs;
  const turn = (id: string): void =>
    onChoice({
      ...choice,
      jigs: picked.includes(id) ? picked.filter((other) => other !== id) : [...picked, id],
    });
  const gone = picked.filter((id) => !jigs.some((jig) => jig.id === id));
  return (
    <>
      <ChoiceField
        label="Jigs"
        value={choice.jigs === 'all' ? 'all' : 'picked'}
        choices={[
          { value: 'all', label: `all ${jigs.length} jigs of the order` },
          { value: 'picked', label: 'only those picked here' },
        ]}
        hint="fit.csv and schedule.csv are of the whole order in any case."
        onChange={(value) => onChoice({ ...choice, jigs: value === 'all' ? 'all' : [] })}
      />
      {choice.jigs === 'all' ? null : (
        <fieldset className="output-choice output-jigs">
          <legend>Picked jigs</legend>
          <div>
            {jigs.map((jig) => (
              <label key={jig.id} className="document-switch">
                <input type="checkbox" checked={includesJig(choice, jig.id)} onChange={() => turn(jig.id)} />
                <span>
                  {jig.id} {jig.kind} <span className="output-purpose">{settingsText(jig, unit)}</span>
                </span>
              </label>
            ))}
            {gone.map((id) => (
              <label key={id} className="document-switch">
                <input type="checkbox" checked onChange={() => turn(id)} />
                <span className="output-failed">{id}: not among the jigs of the order any more</span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
    </>
  );
}
