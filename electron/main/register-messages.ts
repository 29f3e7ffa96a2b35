import { isAbsolute } from 'node:path';
import { NOTICES } from '../../shared/contract/bridge.ts';
import { CHANNELS } from '../../shared/contract/channels.ts';
import { isDocumentName } from '../../shared/document-kinds.ts';
import type { Grants } from '../messages/grants.ts';
import type { Router } from '../messages/router.ts';
import { isFromOurPage, type Sender } from './sender.ts';

export interface MessageParts {
  readonly router: Router;
  readonly grants: Grants;
  /** The contents of our window. */
  readonly contents: () => unknown;
  readonly listening: () => void;
}

type Main = Pick<Electron.IpcMain, 'handle' | 'on'>;

/** Answers the page's messages; the sender is looked at before the message. */
export function registerMessages(ipcMain: Main, { router, grants, contents, listening }: MessageParts): void {
  const ours = (event: Sender): boolean => isFromOurPage(event, contents());
  for (const channel of CHANNELS) {
    ipcMain.handle(channel, async (event, request: unknown) =>
      ours(event) ? router.answer(channel, request) : REFUSED,
    );
  }
  ipcMain.handle(NOTICES.dropped, async (event, path: unknown) => {
    if (!ours(event)) return REFUSED;
    if (typeof path !== 'string' || !isAbsolute(path))
      return { ok: false, reason: 'what was dropped is no file' };
    if (!isDocumentName(path))
      return { ok: false, reason: 'only projects and order tables (CSV) can be opened' };
    return router.answer('document.open', { source: grants.grant(path) });
  });
  ipcMain.on(NOTICES.listening, (event) => {
    if (ours(event)) listening();
  });
}

const REFUSED = { ok: false, reason: 'the sender is not the page of this program' } as const;
