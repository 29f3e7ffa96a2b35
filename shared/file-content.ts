/** What a file holds as messages carry it, which are JSON: text as it is, bytes in base64. */
export type PackedContent = string | { readonly base64: string };

/** Bytes that are made into characters at once; a call takes no more arguments than some ten thousands. */
const CHUNK = 8192;

/** @example packContent(new Uint8Array([1, 2, 3])) // { base64: 'AQID' } */
export function packContent(content: string | Uint8Array): PackedContent {
  if (typeof content === 'string') return content;
  const chunks: string[] = [];
  for (let start = 0; start < content.length; start += CHUNK) {
    chunks.push(String.fromCharCode(...content.subarray(start, start + CHUNK)));
  }
  return { base64: btoa(chunks.join('')) };
}

/** Takes back what `packContent` gave; the schema of messages has seen that it is base64. */
export const unpackContent = (packed: PackedContent): string | Uint8Array =>
  typeof packed === 'string' ? packed : Uint8Array.from(atob(packed.base64), (sign) => sign.charCodeAt(0));
