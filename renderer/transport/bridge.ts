import type { Bridge } from '../../shared/contract/bridge.ts';

declare global {
  interface Window {
    readonly overhang?: Bridge<File>;
  }
}

/** The way to the desktop shell; undefined in a browser. */
export const bridge = (): Bridge<File> | undefined => window.overhang;
