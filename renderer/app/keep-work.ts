import { isUnsaved } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import type { Tab } from '../../shared/contract/tab.ts';
import { send } from '../transport/send.ts';
import { ownTab } from '../transport/tab.ts';
import { draftWriter, NO_WRITER } from './draft-writer.ts';
import { firstPicture } from './first-picture.ts';
import { useNotices } from './notices.ts';

/** ms. Typing goes on for a while before a snapshot is worth its writing. */
const QUIET = 1500;

/** ms. Who types without a pause loses no more than this. */
const LONGEST = 10_000;

/**
 * Tells the platform of unsaved work, which guards the window, and keeps a snapshot of it for after a crash. It says
 * nothing before the platform has been asked for the work of an earlier time: that nothing is unsaved would be taken
 * for that work.
 */
export function keepWork(asked: Promise<unknown>): () => void {
  const tabAfterAsking = (): Promise<Tab> => asked.then(ownTab, ownTab);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let changedAt: number | null = null;
  let refused = '';
  const tellUnsaved = (): void => {
    const state = useProgram.getState();
    const name = state.file.name ?? state.draft.name;
    const unsaved = isUnsaved(state);
    void tabAfterAsking().then((tab) => send('document.changed', { tab, unsaved, name }));
    document.title = `${unsaved ? '• ' : ''}${name} - Overhang`;
  };
  const keep = async (): Promise<void> => {
    changedAt = null;
    const tab = await tabAfterAsking();
    const state = useProgram.getState();
    if (!isUnsaved(state)) return;
    const { draft, file } = state;
    const writeDraft = await draftWriter().catch(() => null);
    const kept =
      writeDraft === null
        ? { ok: false as const, reason: NO_WRITER }
        : await send('document.keep', {
            tab,
            name: file.name ?? `${draft.name}.overhang`,
            handle: file.handle,
            text: writeDraft(draft),
          });
    const reason = kept.ok ? '' : kept.reason;
    // Told once, not after every pause in the typing.
    if (reason !== '' && reason !== refused) {
      useNotices.getState().tell(`Unsaved work is not kept for after a crash: ${reason}`);
    }
    refused = reason;
  };
  tellUnsaved();
  void firstPicture('space')
    .then(draftWriter)
    .catch(() => undefined);
  const stop = useProgram.subscribe((state, before) => {
    if (state.draft === before.draft && state.file === before.file) return;
    tellUnsaved();
    clearTimeout(timer);
    const now = performance.now();
    changedAt ??= now;
    timer = setTimeout(() => void keep(), Math.max(0, Math.min(QUIET, changedAt + LONGEST - now)));
  });
  return () => {
    stop();
    clearTimeout(timer);
  };
}
