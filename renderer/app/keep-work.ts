import { writeDraft } from '../../core/project/write-draft.ts';
import { isUnsaved } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import { send } from '../transport/send.ts';

/** ms. Typing goes on for a while before a snapshot is worth its writing. */
const QUIET = 1500;

/** Tells the platform of unsaved work, which guards the window, and keeps a snapshot of it for after a crash. */
export function keepWork(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tellUnsaved = (): void => {
    const state = useProgram.getState();
    const name = state.file.name ?? state.draft.name;
    void send('document.changed', { unsaved: isUnsaved(state), name });
    document.title = `${isUnsaved(state) ? '• ' : ''}${name} - Overhang`;
  };
  const keep = (): void => {
    const { draft, file } = useProgram.getState();
    if (!isUnsaved(useProgram.getState())) return;
    void send('document.keep', {
      name: file.name ?? `${draft.name}.overhang`,
      handle: file.handle,
      text: writeDraft(draft),
    });
  };
  tellUnsaved();
  const stop = useProgram.subscribe((state, before) => {
    if (state.draft === before.draft && state.file === before.file) return;
    tellUnsaved();
    clearTimeout(timer);
    timer = setTimeout(keep, QUIET);
  });
  return () => {
    stop();
    clearTimeout(timer);
  };
}
