import { ORIGIN } from './scheme.ts';

/** What is known about who sent a message; a frame that is gone is null. */
export interface Sender {
  readonly sender: unknown;
  readonly senderFrame: (Pick<Electron.WebFrameMain, 'origin' | 'url'> & { readonly parent: unknown }) | null;
}

/** Whether a message comes from the top frame of our window, and that frame shows our page. */
export function isFromOurPage({ sender, senderFrame }: Sender, contents: unknown): boolean {
  return (
    sender === contents &&
    senderFrame !== null &&
    senderFrame.parent === null &&
    senderFrame.origin === ORIGIN &&
    senderFrame.url.startsWith(`${ORIGIN}/`)
  );
}
