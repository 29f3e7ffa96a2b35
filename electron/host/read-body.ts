import type { IncomingMessage } from 'node:http';
import { MAX_DOCUMENT_BYTES } from '../files/read-document.ts';

/** JSON may escape a character to six bytes; what the text comes to is checked again by the router. */
export const MAX_BODY_BYTES = 2 * MAX_DOCUMENT_BYTES;

/** The bytes of a request, or null if there are more than the limit; what is beyond it is not read. */
export async function readBody(request: IncomingMessage, limit: number): Promise<Uint8Array | null> {
  if (Number(request.headers['content-length'] ?? 0) > limit) return null;
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Uint8Array>) {
    size += chunk.length;
    if (size > limit) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
