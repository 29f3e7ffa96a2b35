import * as fc from 'fast-check';

/** A source or a name, with something in it. */
export const anyText = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
  .map((text) => text.trim())
  .filter((text) => text !== '' && text !== '__proto__');
