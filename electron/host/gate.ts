import type { IncomingHttpHeaders } from 'node:http';

export interface Knock {
  readonly method: string;
  readonly pathname: string;
  readonly headers: IncomingHttpHeaders;
}

export interface TurnedAway {
  readonly status: number;
  readonly reason: string;
}

/**
 * Who may talk to the host: its own page and nobody else's. `authority` is `127.0.0.1:8080`.
 *
 * - The `Host` header must be exactly ours: a foreign name that was made to point to this machine
 *   (DNS rebinding) still carries its own name.
 * - Whatever changes or tells something is a POST with our `Origin`, which browsers always send with a POST
 *   and which a page cannot forge, and with a type that a foreign page cannot send without being asked first.
 * - Downloads have ids that cannot be guessed, and are not given to foreign pages either.
 *
 * Programs on the same machine can forge all of this; no secret is asked of the page, since what they could
 * get are order files that the same user may read, and another user's only while the host runs.
 */
export function turnAway({ method, pathname, headers }: Knock, authority: string): TurnedAway | null {
  if (headers.host !== authority) return { status: 421, reason: `This is only http://${authority}/` };
  const site = headers['sec-fetch-site'];
  if (method === 'GET' || method === 'HEAD') {
    const foreign = site !== undefined && site !== 'same-origin' && site !== 'none';
    // Following a link from elsewhere to the page itself is no harm.
    if (foreign && pathname !== '/') return { status: 403, reason: 'Only the page of this program may ask.' };
    return null;
  }
  if (method !== 'POST') return { status: 405, reason: 'Only GET and POST are answered here.' };
  if (headers.origin !== `http://${authority}` || (site !== undefined && site !== 'same-origin')) {
    return { status: 403, reason: 'Only the page of this program may ask.' };
  }
  const type = pathname === '/upload' ? 'application/octet-stream' : 'application/json';
  return headers['content-type'] === type ? null : { status: 415, reason: `Send ${type}.` };
}
