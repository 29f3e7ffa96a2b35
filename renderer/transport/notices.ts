import { bridge } from './bridge.ts';

const nothing = (): void => undefined;

/** Calls back with the id of each action picked in the desktop's menu. Returns the way to end it. */
export const listenForActions = (listener: (id: string) => void): (() => void) =>
  bridge()?.onAction(listener) ?? nothing;

/**
 * Calls back with the handle of each document that the system asks to open: send it as `source` of
 * `document.open`, after asking about unsaved work. Returns the way to end it.
 */
export const listenForOffers = (listener: (handle: string) => void): (() => void) =>
  bridge()?.onOffered(listener) ?? nothing;
