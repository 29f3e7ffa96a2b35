import type { IncomingMessage } from 'node:http';
import { basename } from 'node:path';
import { MAX_DOCUMENT_BYTES } from '../files/read-document.ts';
import type { Router } from '../messages/router.ts';
import { answerPage, plain, type PageAnswer } from '../pages/answer-page.ts';
import { SECURITY_HEADERS } from '../pages/security-headers.ts';
import { turnAway, type Lock } from './gate.ts';
import { MAX_BODY_BYTES, readBody } from './read-body.ts';
import type { Shelf } from './shelf.ts';

export interface HostParts {
  /** Folder of the built page. */
  readonly page: string;
  readonly lock: Lock;
  readonly router: Router;
  readonly uploads: Shelf;
  readonly downloads: Shelf;
}

/** Answers one request of the page: its own files, messages of the contract, uploads and downloads. */
export async function answerRequest(parts: HostParts, request: IncomingMessage): Promise<PageAnswer> {
  const { method = '', url = '', headers } = request;
  const [pathname = '', query = ''] = url.split('?', 2);
  // Of two host names the language's own reader gives the first alone, where RFC 9112, 3.2, asks for a refusal.
  if ((request.headersDistinct['host'] ?? []).length !== 1) return plain(400, 'Name one host.');
  const away = turnAway({ method, pathname, headers }, parts.lock);
  if (away !== null) return plain(away.status, away.reason);
  if (method === 'POST') return answerPost(parts, request, pathname, query);
  const id = /^\/download\/([0-9a-f-]{36})$/.exec(pathname)?.[1];
  return id === undefined ? answerPage(parts.page, method, pathname) : download(parts.downloads, id);
}

async function answerPost(
  { router, uploads }: HostParts,
  request: IncomingMessage,
  pathname: string,
  query: string,
): Promise<PageAnswer> {
  const channel = /^\/message\/([a-z.]{1,40})$/.exec(pathname)?.[1];
  if (channel === undefined && pathname !== '/upload') return plain(404, 'There is no such place.');
  const body = await readBody(request, channel === undefined ? MAX_DOCUMENT_BYTES : MAX_BODY_BYTES);
  if (body === null) return plain(413, 'That is larger than any order.');
  if (channel === undefined) {
    const name = basename(new URLSearchParams(query).get('name') ?? '').slice(0, 200);
    return json({ token: uploads.put({ name, bytes: body }) });
  }
  const message = parseJson(body);
  if (message === undefined) return plain(400, 'That is not JSON.');
  return json(await router.answer(channel, message));
}

function parseJson(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}

const json = (value: unknown): PageAnswer => ({
  status: 200,
  headers: { ...SECURITY_HEADERS, 'Content-Type': 'application/json; charset=utf-8' },
  body: new TextEncoder().encode(JSON.stringify(value)),
});

function download(downloads: Shelf, id: string): PageAnswer {
  const file = downloads.get(id);
  if (file === undefined) return plain(404, 'This download has made way for newer ones.');
  return {
    status: 200,
    headers: {
      ...SECURITY_HEADERS,
      'Content-Type': 'application/octet-stream',
      'Content-Disposition': `attachment; filename*=UTF-8''${encodeRfc5987(file.name)}`,
    },
    body: new Uint8Array(file.bytes),
  };
}

/** What `encodeURIComponent` leaves and RFC 5987 does not: ' ( ) *. */
const encodeRfc5987 = (name: string): string =>
  encodeURIComponent(name).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);
