import type { Tab } from '../../shared/contract/tab.ts';

const uuid = (number: number): string => `00000000-0000-4000-8000-${String(number).padStart(12, '0')}`;

/** A tab by its number, in the first browser or in another one. */
export const tabOf = (number: number, browser = 1): Tab => ({
  id: uuid(number),
  browser: uuid(900 + browser),
});

/** The tab of tests that need only one. */
export const TAB = tabOf(1);
