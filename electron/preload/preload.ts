import { contextBridge, ipcRenderer, webUtils, type IpcRendererEvent } from 'electron';
import { NOTICES, type Bridge } from '../../shared/contract/bridge.ts';
import { CHANNELS } from '../../shared/contract/channels.ts';

type DroppedFile = Parameters<typeof webUtils.getPathForFile>[0];

const known = new Set<string>(CHANNELS);

function listen(notice: string, listener: (word: string) => void): () => void {
  // The event itself would give the page a way to everything.
  const call = (_: IpcRendererEvent, word: string) => listener(word);
  ipcRenderer.on(notice, call);
  return () => void ipcRenderer.off(notice, call);
}

const bridge: Bridge<DroppedFile> = {
  send: async (channel, request) => {
    if (!known.has(channel)) throw new Error('unknown message');
    return ipcRenderer.invoke(channel, request);
  },
  openDropped: async (file) => ipcRenderer.invoke(NOTICES.dropped, webUtils.getPathForFile(file)),
  onAction: (listener) => listen(NOTICES.action, listener),
  onOffered(listener) {
    const end = listen(NOTICES.offered, listener);
    ipcRenderer.send(NOTICES.listening);
    return end;
  },
};

contextBridge.exposeInMainWorld('overhang', bridge);
