import type { ThemeName } from './types.ts';

/** What the system prefers; light where nobody can tell. */
export const preferredTheme = (): ThemeName =>
  typeof matchMedia === 'function' && matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
