import type { OpenText, SaveText } from '../document/files.ts';
import { send } from '../transport/send.ts';
import { useNotices } from './notices.ts';

/** Asks for a file and reads its text, for what is kept beside the order: standards and machine profiles. */
export const openText: OpenText = async () => {
  const reply = await send('document.open', { source: null });
  if (!reply.ok) useNotices.getState().tell(`Not opened: ${reply.reason}`);
  return !reply.ok || reply.cancelled ? null : { name: reply.name, text: reply.text };
};

/** Saves a text under a name that may be changed. */
export const saveText: SaveText = (suggestedName, text) => {
  void send('document.save', { tab: null, handle: null, suggestedName, text }).then((reply) => {
    if (!reply.ok) useNotices.getState().tell(`Not saved: ${reply.reason}`);
    else if (!reply.cancelled) useNotices.getState().tell(`Saved ${reply.name}`);
  });
};
