/** What stands beside a value that has no source, in a shop standard as everywhere. */
export const NO_SOURCE = 'common practice, no source';
