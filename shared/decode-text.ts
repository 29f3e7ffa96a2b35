export type DecodedText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: string };

const SAVE_AS = 'save it as CSV UTF-8';

/**
 * Decodes the bytes of a text file, which must be UTF-8, with or without a byte order mark; a reason that
 * names the first wrong byte is given for anything else.
 *
 * @example decodeText(new TextEncoder().encode('½')) // { ok: true, text: '½' }
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff])) {
    return { ok: false, reason: `The file is UTF-16 text; ${SAVE_AS}.` };
  }
  const nul = bytes.indexOf(0);
  if (nul !== -1) {
    const reason = `The file is no text: ${where(bytes, nul)} is 00, as in spreadsheet, picture or UTF-16 files; ${SAVE_AS}.`;
    return { ok: false, reason };
  }
  const wrong = firstInvalidByte(bytes);
  if (wrong !== -1) {
    const hex = (bytes[wrong] ?? 0).toString(16).toUpperCase().padStart(2, '0');
    return { ok: false, reason: `The file is not UTF-8 text: ${where(bytes, wrong)} is ${hex}; ${SAVE_AS}.` };
  }
  return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
}

const startsWith = (bytes: Uint8Array, mark: readonly number[]): boolean =>
  mark.every((byte, index) => bytes[index] === byte);

/** `byte 17, in line 2,`; both count from 1. */
function where(bytes: Uint8Array, index: number): string {
  let line = 1;
  for (const byte of bytes.subarray(0, index)) if (byte === 0x0a) line += 1;
  return `byte ${index + 1}, in line ${line},`;
}

/**
 * Where the first sequence begins that is not well-formed UTF-8, or -1. Lengths and the range of the
 * second byte are those of Table 3-7 of the Unicode Standard (from memory).
 */
function firstInvalidByte(bytes: Uint8Array): number {
  let index = 0;
  while (index < bytes.length) {
    const lead = bytes[index] ?? 0;
    const sequence = sequenceOf(lead);
    if (sequence === undefined) return index;
    for (let offset = 1; offset < sequence.length; offset += 1) {
      const byte = bytes[index + offset] ?? 0;
      const low = offset === 1 ? sequence.low : 0x80;
      const high = offset === 1 ? sequence.high : 0xbf;
      if (byte < low || byte > high) return index;
    }
    index += sequence.length;
  }
  return -1;
}

function sequenceOf(
  lead: number,
): { readonly length: number; readonly low: number; readonly high: number } | undefined {
  if (lead <= 0x7f) return { length: 1, low: 0, high: 0 };
  if (lead >= 0xc2 && lead <= 0xdf) return { length: 2, low: 0x80, high: 0xbf };
  if (lead >= 0xe0 && lead <= 0xef) {
    // No overlong forms, no surrogates.
    return { length: 3, low: lead === 0xe0 ? 0xa0 : 0x80, high: lead === 0xed ? 0x9f : 0xbf };
  }
  if (lead >= 0xf0 && lead <= 0xf4) {
    return { length: 4, low: lead === 0xf0 ? 0x90 : 0x80, high: lead === 0xf4 ? 0x8f : 0xbf };
  }
  return undefined;
}
