import { useEffect } from 'react';
import { actionFor } from '../store/shortcuts.ts';
import { useProgram } from '../store/use-program.ts';
import { listenForActions } from '../transport/notices.ts';
import { ACTIONS } from './actions.ts';
import { IS_MAC } from './is-mac.ts';

const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, textarea, select');

/** Performs actions by their keys, and those that are picked in the desktop's menu. */
export function useShortcuts(): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      // In front of a question nothing else is done.
      if (document.querySelector('dialog[open]') !== null) return;
      const action = actionFor(ACTIONS, event, { isMac: IS_MAC, typing: isField(event.target) });
      if (action === undefined) return;
      event.preventDefault();
      if (action.enabled(useProgram.getState())) action.perform();
    };
    window.addEventListener('keydown', onKeyDown);
    const stop = listenForActions((id) => {
      const action = ACTIONS.find((known) => known.id === id);
      if (action?.enabled(useProgram.getState()) === true) action.perform();
    });
    return () => {
      window.removeEventListener('keydown', onKeyDown);
      stop();
    };
  }, []);
}
