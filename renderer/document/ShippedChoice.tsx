import { useId, useState } from 'react';

interface ShippedChoiceProps<Of extends { readonly name: string }> {
  /** `standard` */
  readonly what: string;
  readonly shipped: readonly Of[];
  readonly onStart: (from: Of) => void;
  readonly onOpen?: () => void;
  readonly onSave?: () => void;
}

/** Where a document comes from: one that comes with the program, or a file of the shop's own. */
export function ShippedChoice<Of extends { readonly name: string }>(props: ShippedChoiceProps<Of>) {
  const { what, shipped, onStart, onOpen, onSave } = props;
  const id = useId();
  const [name, setName] = useState(shipped[0]?.name ?? '');
  const chosen = shipped.find((one) => one.name === name);
  return (
    <>
      <div className="document-pick">
        <div className="fields-field">
          <label className="fields-label" htmlFor={id}>
            One that comes with the program
          </label>
          <select
            id={id}
            className="fields-input"
            value={name}
            onChange={(event) => setName(event.target.value)}
          >
            {shipped.map((one) => (
              <option key={one.name}>{one.name}</option>
            ))}
          </select>
        </div>
        <button
          type="button"
          onClick={() => {
            if (chosen !== undefined) onStart(chosen);
          }}
        >
          Start from it
        </button>
      </div>
      {onOpen === undefined ? null : (
        <button type="button" onClick={onOpen}>
          Open a {what} …
        </button>
      )}
      {onSave === undefined ? null : (
        <button type="button" onClick={onSave}>
          Save this {what} …
        </button>
      )}
    </>
  );
}
