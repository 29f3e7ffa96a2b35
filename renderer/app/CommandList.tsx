import { useRef, useState } from 'react';
import { shortcutText } from '../store/shortcuts.ts';
import { useProgram } from '../store/use-program.ts';
import { ACTIONS } from './actions.ts';
import { IS_MAC } from './is-mac.ts';
import './command-list.css';

/** All that can be done, with its keys, to look through by typing. */
export function CommandList() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [sought, setSought] = useState('');
  const state = useProgram();
  const found = ACTIONS.filter(({ label }) => label.toLowerCase().includes(sought.trim().toLowerCase()));
  return (
    <>
      <button type="button" onClick={() => dialog.current?.showModal()}>
        All commands
      </button>
      <dialog ref={dialog} className="commands" aria-label="All commands" onClose={() => setSought('')}>
        <label className="commands-search">
          Look for
          <input value={sought} onChange={(event) => setSought(event.target.value)} />
        </label>
        <ul className="commands-list">
          {found.map((action) => (
            <li key={action.id}>
              <button
                type="button"
                disabled={!action.enabled(state)}
                onClick={() => {
                  dialog.current?.close();
                  action.perform();
                }}
              >
                <span>{action.label}</span>
                <kbd>{action.shortcut === null ? '' : shortcutText(action.shortcut, IS_MAC)}</kbd>
              </button>
            </li>
          ))}
        </ul>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </dialog>
    </>
  );
}
