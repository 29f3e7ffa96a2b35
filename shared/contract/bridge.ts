import type { Reply, Send } from './messages.ts';

/** What the desktop shell tells the renderer of its own accord, and what the preload tells the shell. */
export const NOTICES = {
  /** An action was picked in the menu; carries its id. */
  action: 'notice.action',
  /** The system asks to open a document; carries its handle. */
  offered: 'notice.offered',
  /** The renderer listens for offered documents from now on. */
  listening: 'notice.listening',
  /** A file was dropped on the window; carries its path, which only the preload can know. */
  dropped: 'document.dropped',
} as const;

/**
 * What the preload gives to the page as `window.overhang`; absent in a browser.
 */
export interface Bridge<DroppedFile> {
  readonly send: Send;
  /** Opens a file that was dropped on the window, and replies as `document.open` does. */
  readonly openDropped: (file: DroppedFile) => Promise<Reply<'document.open'>>;
  /** Calls back with the id of each action picked in the menu. Returns the way to end it. */
  readonly onAction: (listener: (id: string) => void) => () => void;
  /** Calls back with the handle of each document that the system asks to open. */
  readonly onOffered: (listener: (handle: string) => void) => () => void;
}
