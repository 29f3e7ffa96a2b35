import { ChoiceField, type Choice } from '../fields/ChoiceField.tsx';
import type { FieldFrame } from '../fields/Field.tsx';
import type { DocumentEdit } from './edit.ts';
import type { Path } from './json.ts';

interface DocumentChoiceProps<T extends string> extends FieldFrame {
  readonly edit: DocumentEdit;
  readonly path: Path;
  readonly choices: readonly Choice<T>[];
  /** Where its faults may stand besides its own path. */
  readonly faultPath?: Path;
}

/** One of a few words at a place of a document; a word that is none of them is shown as it stands. */
export function DocumentChoice<T extends string>({
  edit,
  path,
  faultPath,
  choices,
  ...frame
}: DocumentChoiceProps<T>) {
  const value = edit.text(path);
  const fault = edit.fault(path) ?? (faultPath === undefined ? null : edit.fault(faultPath));
  const known = choices.some((choice) => choice.value === value);
  const shown: readonly Choice<string>[] = known ? choices : [...choices, { value, label: value }];
  return (
    <>
      <ChoiceField {...frame} value={value} choices={shown} onChange={(word) => edit.set(path, word)} />
      {fault === null ? null : <p className="fields-fault">Fault: {fault}</p>}
    </>
  );
}
