import type { ThemeName } from '../store/types.ts';

/** Colours of `tokens.css` that a seat is drawn with. */
export const TOKENS = [
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

export type TokenName = (typeof TOKENS)[number];

/** A colour of the page in one theme, #rrggbb. */
export type Tokens = (name: TokenName) => string;

/** A colour of `tokens.css` as it is in a theme: `light-dark(#rrggbb, #rrggbb)` is one for each. */
export function inTheme(value: string, theme: ThemeName): string {
  const [, light, dark] = /^light-dark\((#[0-9a-f]{6}), ?(#[0-9a-f]{6})\)$/i.exec(value) ?? [];
  return (theme === 'light' ? light : dark) ?? value;
}
