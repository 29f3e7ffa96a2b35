import { useMemo, useSyncExternalStore } from 'react';
import { preferredTheme } from '../store/preferred-theme.ts';
import type { ThemeName } from '../store/types.ts';
import { inTheme, TOKENS, type Tokens } from './tokens.ts';

/** The theme is an attribute of the page; it may change at any time. */
function watch(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true });
  return () => observer.disconnect();
}

function read(): string {
  const style = getComputedStyle(document.documentElement);
  const theme = themeOf(style.colorScheme);
  return TOKENS.map((name) => inTheme(style.getPropertyValue(`--${name}`).trim(), theme)).join('|');
}

/** A page that names no theme has the system's. */
const themeOf = (scheme: string): ThemeName =>
  scheme === 'light' || scheme === 'dark' ? scheme : preferredTheme();

/** The colours of the page as they are now, for what is not drawn by style sheets. */
export function useTokens(): Tokens {
  const text = useSyncExternalStore(watch, read, () => '');
  return useMemo(() => {
    const values = text.split('|');
    return (name) => values[TOKENS.indexOf(name)] ?? '';
  }, [text]);
}
