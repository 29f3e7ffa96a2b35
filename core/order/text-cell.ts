import type { Cell, CellReader } from './cell-readers.ts';

/** Characters of a name: it is engraved on jigs and stands in file names. */
const LONGEST_NAME = 80;

/** Characters of a note, which stands on the drawer's sheet. */
const LONGEST_NOTE = 500;

/** Control characters, line separators, marks that turn the direction of text, and stray byte order marks. */
const UNPRINTABLE = /[\p{Cc}\u2028\u2029\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/u;

const refuse = (code: string, reason: string): Cell<never> => ({ ok: false, code, reason });

const words =
  (longest: number, mayBreak: boolean): CellReader<string> =>
  (text) => {
    if (text.includes('\ufffd')) {
      return refuse('order/encoding', 'a character was lost when the file was saved; save it as CSV UTF-8');
    }
    if (!mayBreak && /[\r\n]/.test(text)) {
      return refuse('order/line-break', 'a name stands on one line; take the line break out');
    }
    const control = UNPRINTABLE.exec(mayBreak ? text.replace(/\n/g, ' ') : text);
    if (control !== null) {
      return refuse(
        'order/control-character',
        `it holds the unprintable character ${codePoint(control[0])}; type it again`,
      );
    }
    const { length } = Array.from(text);
    if (length > longest) {
      return refuse('order/too-long', `it has ${length} characters; write ${longest} at most`);
    }
    return { ok: true, value: text };
  };

/** A name or word of the shop's own, on one line. */
export const readNameCell = words(LONGEST_NAME, false);

/** A remark, which may have several lines. */
export const readNoteCell = words(LONGEST_NOTE, true);

const codePoint = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
