import { includesKind, type OutputChoice } from '../../core/files/output-choice.ts';
import { OUTPUT_GROUPS, OUTPUT_KINDS, type OutputKindId } from '../../core/files/output-kinds.ts';

interface KindChoiceProps {
  readonly choice: OutputChoice;
  readonly onChoice: (choice: OutputChoice) => void;
}

/** Which kinds of file are written, each with what it is for. */
export function KindChoice({ choice, onChoice }: KindChoiceProps) {
  const turn = (turned: OutputKindId): void =>
    onChoice({
      ...choice,
      // In the order of the list, however they were picked.
      kinds: OUTPUT_KINDS.map(({ id }) => id).filter((id) => includesKind(choice, id) !== (id === turned)),
    });
  return OUTPUT_GROUPS.map((group) => (
    <fieldset key={group.id} className="output-choice">
      <legend>{group.label}</legend>
      <div>
        {OUTPUT_KINDS.filter((kind) => kind.group === group.id).map(({ id, label, purpose }) => (
          <label key={id} className="document-switch">
            <input type="checkbox" checked={includesKind(choice, id)} onChange={() => turn(id)} />
            <span>
              {label} <span className="output-purpose">{purpose}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  ));
}
