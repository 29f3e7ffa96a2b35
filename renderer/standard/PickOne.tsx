import { useId } from 'react';

interface PickOneProps {
  readonly label: string;
  readonly names: readonly string[];
  readonly picked: number;
  readonly onPick: (index: number) => void;
  readonly onAdd: () => void;
  readonly onRemove: () => void;
  /** What there is no removing, with the reason. */
  readonly keep?: string | null;
}

/** Which of several is edited; adds a copy of it, or takes it out. */
export function PickOne({ label, names, picked, onPick, onAdd, onRemove, keep = null }: PickOneProps) {
  const id = useId();
  const what = label.toLowerCase();
  return (
    <div className="document-pick">
      <div className="fields-field">
        <label className="fields-label" htmlFor={id}>
          {label}
        </label>
        <select
          id={id}
          className="fields-input"
          value={picked}
          disabled={names.length === 0}
          onChange={(event) => onPick(Number(event.target.value))}
        >
          {names.map((name, index) => (
            // oxlint-disable-next-line react/no-array-index-key -- names may be the same while they are typed
            <option key={index} value={index}>
              {name === '' ? 'without a name' : name}
            </option>
          ))}
        </select>
      </div>
      <button type="button" onClick={onAdd}>
        {names.length === 0 ? `Add a ${what}` : `Add a copy of this ${what}`}
      </button>
      <button
        type="button"
        disabled={names.length === 0 || keep !== null}
        title={keep ?? undefined}
        onClick={onRemove}
      >
        Remove this {what}
      </button>
    </div>
  );
}

/** A name that none of the others has: `inset 2`. */
export function freeName(name: string, names: readonly string[], between: ' ' | '-' = ' '): string {
  const base = name.replace(/[ -]\d+$/, '');
  for (let number = 2; ; number += 1) {
    const free = `${base}${between}${number}`;
    if (!names.some((other) => other.toLowerCase() === free.toLowerCase())) return free;
  }
}
