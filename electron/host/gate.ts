import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';
import { HOST_KEY } from '../../shared/contract/host-key.ts';

export interface Knock {
  readonly method: string;
  readonly pathname: string;
  readonly headers: IncomingHttpHeaders;
}

export interface TurnedAway {
  readonly status: number;
  readonly reason: string;
}

/** What a message, an upload or a download is not given without. */
export interface Lock {
  /** `127.0.0.1:8080`. */
  readonly authority: string;
  /** Made anew at each start; the printed address has it behind its `#`, which browsers send to nobody. */
  readonly key: string;
}

/**
 * Who may talk to the host: its own page, opened at the address that was printed, and nobody else.
 *
 * - The `Host` header must be exactly ours: a foreign name that was made to point to this machine
 *   (DNS rebinding) still carries its own name.
 * - Whatever changes or tells something is a POST with our `Origin`, which browsers always send with a POST
 *   and which a page cannot forge, and with a type that a foreign page cannot send without being asked first.
 * - It also carries the key, which other programs of this machine do not know: they can forge all the rest. No
 *   cookie holds it, since browsers send cookies to every port of an address.
 * - Downloads have ids that cannot be guessed and that only a message gives out.
 *
 * Without the key anybody on this machine gets the page, which is the program without any work in it. What the
 * key cannot keep out are programs of the same user, who may read the user's files, the snapshots among them.
 */
export function turnAway({ method, pathname, headers }: Knock, { authority, key }: Lock): TurnedAway | null {
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
  if (!isSame(headers[HOST_KEY], key)) return { status: 403, reason: NO_KEY };
  const type = pathname === '/upload' ? 'application/octet-stream' : 'application/json';
  return headers['content-type'] === type ? null : { status: 415, reason: `Send ${type}.` };
}

const NO_KEY =
  'This page does not have the key of the host that runs now: open the whole address that the host printed when it started.';

/** Takes as long for a wrong key that begins right as for any other. */
function isSame(given: string | readonly string[] | undefined, key: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return typeof given === 'string' && timingSafeEqual(digest(given), digest(key));
}
