import { readFile } from 'node:fs/promises';
import { contentType } from './content-type.ts';
import { locatePage } from './locate-page.ts';
import { SECURITY_HEADERS } from './security-headers.ts';

/** A built file whose name has a hash of its content: by that name it never changes. */
const NAMED_BY_CONTENT = /^\/assets\/[^/]+-[A-Za-z0-9_-]{8}\.[a-z0-9]+$/;

/** A browser that keeps a script also keeps what it has translated it to. */
const FOR_GOOD = 'private, max-age=31536000, immutable';

export interface PageAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Uint8Array<ArrayBuffer>;
}

/** Answers a request for a file of the built page, with the same headers on the desktop and in a browser. */
export async function answerPage(root: string, method: string, pathname: string): Promise<PageAnswer> {
  if (method !== 'GET' && method !== 'HEAD') return plain(405, 'Only GET is answered here.');
  const file = locatePage(root, pathname);
  const content = file === null ? null : await readFile(file).catch(() => null);
  if (file === null || content === null) return plain(404, 'There is no such file.');
  return {
    status: 200,
    headers: {
      ...SECURITY_HEADERS,
      'Content-Type': contentType(file) ?? 'application/octet-stream',
      ...(NAMED_BY_CONTENT.test(pathname) ? { 'Cache-Control': FOR_GOOD } : {}),
    },
    body: new Uint8Array(method === 'HEAD' ? [] : content),
  };
}

/** A short answer in words. */
export const plain = (status: number, text: string): PageAnswer => ({
  status,
  headers: { ...SECURITY_HEADERS, 'Content-Type': 'text/plain; charset=utf-8' },
  body: new TextEncoder().encode(`${text}\n`),
});
