import { decodeText } from '../../shared/decode-text.ts';
import { Refusal } from '../files/refusal.ts';
import type { Ports } from './ports.ts';
import type { Handlers } from './router.ts';
import { checkText } from './text-limit.ts';

type DocumentChannel =
  | 'document.open'
  | 'document.save'
  | 'document.recent'
  | 'document.keep'
  | 'document.kept'
  | 'document.changed';

/** Messages about the order's own file. */
export function documentHandlers({ documents, recovery }: Ports): Handlers<DocumentChannel> {
  return {
    async 'document.open'({ source }) {
      const file = await documents.open(source);
      if (file === null) return { ok: true, cancelled: true };
      const decoded = decodeText(file.bytes);
      if (!decoded.ok) throw new Refusal(`${file.name}: ${decoded.reason}`);
      return { ok: true, cancelled: false, name: file.name, handle: file.handle, text: decoded.text };
    },
    async 'document.save'({ tab, handle, suggestedName, text, replaceChanged = false }) {
      checkText(text);
      const saved = await documents.save(handle, suggestedName, text, replaceChanged);
      if (saved === null) return { ok: true, cancelled: true };
      if ('changedOutside' in saved) return { ok: true, cancelled: true, ...saved };
      if (tab !== null) await recovery.settle(tab);
      return { ok: true, cancelled: false, ...saved };
    },
    async 'document.recent'() {
      return { ok: true, documents: [...(await documents.recent().catch(() => []))] };
    },
    async 'document.keep'({ tab, ...snapshot }) {
      checkText(snapshot.text);
      await recovery.keep(tab, snapshot);
      return { ok: true };
    },
    async 'document.kept'({ tab, open }) {
      return { ok: true, document: await recovery.kept(tab, open).catch(() => null) };
    },
    async 'document.changed'({ tab, ...state }) {
      documents.changed(state);
      if (!state.unsaved) await recovery.forget(tab).catch(() => undefined);
      return { ok: true };
    },
  };
}
