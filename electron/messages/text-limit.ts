import { Refusal } from '../files/refusal.ts';

/** Characters of one document or cut file: 32 Mi. The largest file of the demo order is below 1 MiB. */
const MAX_TEXT = 32 * 1024 * 1024;

/** Refuses text that no order comes to. */
export function checkText(text: string): void {
  if (text.length > MAX_TEXT) throw new Refusal(`the text is longer than ${MAX_TEXT} characters`);
}

/** As `checkText`, for a file that may be text or bytes. */
export function checkSize(content: string | Uint8Array): void {
  if (typeof content === 'string') checkText(content);
  else if (content.length > MAX_TEXT) throw new Refusal(`the file is larger than ${MAX_TEXT} bytes`);
}
