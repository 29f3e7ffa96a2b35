import type { Channel } from '../../shared/contract/channels.ts';
import type { Reply, Request, Send } from '../../shared/contract/messages.ts';
import { askHost } from './ask-host.ts';
import { chooseFile } from './choose-file.ts';
import { fetchDownload } from './fetch-download.ts';
import { guardTab } from './guard-tab.ts';
import { upload } from './upload.ts';

type SendOne<C extends Channel> = (request: Request<C>) => Promise<Reply<C>>;

/** Messages with which the browser has something to do itself; all others only go to the host. */
const OWN: { readonly [C in Channel]?: SendOne<C> } = {
  async 'document.open'(request) {
    if (request.source !== null) return askHost('document.open', request);
    const file = await chooseFile();
    return file === null ? { ok: true, cancelled: true } : openFile(file);
  },
  async 'document.save'(request) {
    const reply = await askHost('document.save', request);
    if (reply.ok && !reply.cancelled) fetchDownload(reply.download, reply.name);
    return reply;
  },
  async 'document.changed'(request) {
    guardTab(request.unsaved);
    return askHost('document.changed', request);
  },
  async 'output.finish'(request) {
    const reply = await askHost('output.finish', request);
    if (reply.ok) fetchDownload(reply.download, reply.place);
    return reply;
  },
};

/** Sends a message to the browser host. */
export const sendToHost: Send = (channel, request) => {
  const own: SendOne<typeof channel> | undefined = OWN[channel];
  return own === undefined ? askHost(channel, request) : own(request);
};

/** Opens a file that the user has chosen or dropped, by way of an upload. */
export async function openFile(file: File): Promise<Reply<'document.open'>> {
  const uploaded = await upload(file);
  return uploaded.ok ? askHost('document.open', { source: uploaded.token }) : uploaded;
}
