import { useMemo, useSyncExternalStore } from 'react';

const NAMES = [
  'panel',
  'ink',
  'ink-soft',
  'line-strong',
  'accent',
  'wood-front',
  'wood-box',
  'jig',
  'contact',
  'dimension',
  'warning',
] as const;

export type TokenName = (typeof NAMES)[number];

/** The value of a colour of the page. */
export type Tokens = (name: TokenName) => string;

/** The theme is an attribute of the page; it may change at any time. */
function watch(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true });
  return () => observer.disconnect();
}

function read(): string {
  const style = getComputedStyle(document.documentElement);
  return NAMES.map((name) => style.getPropertyValue(`--${name}`).trim()).join('|');
}

/** The colours of the page as they are now, for what is not drawn by style sheets. */
export function useTokens(): Tokens {
  const text = useSyncExternalStore(watch, read);
  return useMemo(() => {
    const values = text.split('|');
    return (name) => values[NAMES.indexOf(name)] ?? '';
  }, [text]);
}
