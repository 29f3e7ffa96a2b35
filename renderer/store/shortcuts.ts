import type { ProgramAction } from './program-actions.ts';

/** What a key event says; a `KeyboardEvent` is one. */
export interface Keys {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/**
 * Whether keys are a shortcut such as `Mod+Shift+Z`; Mod is Cmd on a Mac and Ctrl elsewhere.
 *
 * @example matchesShortcut('Mod+Z', { key: 'z', ctrlKey: true, ... }, false) // true
 */
export function matchesShortcut(shortcut: string, keys: Keys, isMac: boolean): boolean {
  const parts = shortcut.split('+');
  const key = parts.at(-1) ?? '';
  const held = new Set(parts.slice(0, -1));
  const [mod, other] = isMac ? [keys.metaKey, keys.ctrlKey] : [keys.ctrlKey, keys.metaKey];
  return (
    keys.key.toLowerCase() === key.toLowerCase() &&
    mod === held.has('Mod') &&
    !other &&
    keys.altKey === held.has('Alt') &&
    keys.shiftKey === held.has('Shift')
  );
}

/** The action of a shortcut; `typing` when the keys go to a field that somebody types in. */
export const actionFor = (
  actions: readonly ProgramAction[],
  keys: Keys,
  { isMac, typing }: { readonly isMac: boolean; readonly typing: boolean },
): ProgramAction | undefined =>
  actions.find(
    ({ shortcut, leaveToFields = false }) =>
      shortcut !== null && !(typing && leaveToFields) && matchesShortcut(shortcut, keys, isMac),
  );

const ARROWS: Readonly<Record<string, string>> = {
  ArrowUp: '↑',
  ArrowDown: '↓',
  ArrowLeft: '←',
  ArrowRight: '→',
};

/** A shortcut as people read it: `Ctrl+Shift+Z`, on a Mac `⇧⌘Z`. */
export function shortcutText(shortcut: string, isMac: boolean): string {
  const parts = shortcut.split('+').map((part) => ARROWS[part] ?? part);
  if (!isMac) return parts.map((part) => (part === 'Mod' ? 'Ctrl' : part)).join('+');
  const marks: Readonly<Record<string, string>> = { Alt: '⌥', Shift: '⇧', Mod: '⌘' };
  const held = ['Alt', 'Shift', 'Mod'].filter((name) => parts.slice(0, -1).includes(name));
  return `${held.map((name) => marks[name] ?? name).join('')}${parts.at(-1) ?? ''}`;
}

/** For `aria-keyshortcuts`. */
export const ariaShortcut = (shortcut: string, isMac: boolean): string =>
  shortcut.replace('Mod', isMac ? 'Meta' : 'Control');
