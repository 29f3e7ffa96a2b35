import { randomBytes } from 'node:crypto';
import { createServer, type Server, type ServerResponse } from 'node:http';
import packageJson from '../../package.json';
import { diskRecovery } from '../messages/disk-recovery.ts';
import { createGrants } from '../messages/grants.ts';
import { createRouter } from '../messages/router.ts';
import { plain, type PageAnswer } from '../pages/answer-page.ts';
import { answerRequest } from './answer-request.ts';
import { browserDocuments } from './browser-documents.ts';
import { createShelf } from './shelf.ts';
import { zipOutput } from './zip-output.ts';

/** Reached from this machine only. */
const ADDRESS = '127.0.0.1';

const MEBIBYTE = 1024 * 1024;

/** How long the host waits for what it is sent, ms. A page on the same machine needs a moment. */
export interface Patience {
  /** For the head of a request. */
  readonly head: number;
  /** For the whole request. */
  readonly whole: number;
  /** How often it looks. */
  readonly every: number;
}

const PATIENCE: Patience = { head: 15_000, whole: 120_000, every: 5000 };

/** Bytes of a request's head; a larger one is answered by 431. */
const MAX_HEAD_BYTES = 16 * 1024;

export interface HostPlaces {
  /** Folder of the built page. */
  readonly page: string;
  /** Folder for unsaved work. */
  readonly recovery: string;
}

export interface Host {
  /** `http://127.0.0.1:41873/#key=...`, with the key that the page shows with each message. */
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Serves the page and answers its messages until it is stopped. Port 0 takes any that is free. */
export async function serve(
  { page, recovery }: HostPlaces,
  port = 0,
  patience: Patience = PATIENCE,
): Promise<Host> {
  const uploads = createShelf(8, 64 * MEBIBYTE);
  const downloads = createShelf(16, 256 * MEBIBYTE);
  const router = createRouter({
    documents: browserDocuments(uploads, downloads),
    recovery: diskRecovery({ folder: recovery, grants: createGrants(), hashes: new Map() }),
    output: zipOutput(downloads),
    about: { version: packageJson.version, platform: 'browser' },
  });
  const key = randomBytes(32).toString('hex');
  const options = {
    headersTimeout: patience.head,
    requestTimeout: patience.whole,
    connectionsCheckingInterval: patience.every,
    maxHeaderSize: MAX_HEAD_BYTES,
    requireHostHeader: true,
  };
  const server = createServer(options, (request, response) => {
    const authority = `${ADDRESS}:${portOf(server)}`;
    answerRequest({ page, lock: { authority, key }, router, uploads, downloads }, request)
      .catch(() => plain(500, 'The host could not answer; the program goes on.'))
      .then((answer) => send(response, answer, request.complete))
      .catch(() => response.destroy());
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: ADDRESS, port }, resolve);
  });
  return {
    address: `http://${ADDRESS}:${portOf(server)}/#key=${key}`,
    async stop() {
      const closed = new Promise<void>((resolve) => {
        server.close(() => resolve());
      });
      server.closeAllConnections();
      await closed;
      await router.close();
    },
  };
}

function portOf(server: Server): number {
  const address = server.address();
  if (address === null || typeof address === 'string')
    throw new Error('the server does not listen on a port');
  return address.port;
}

/** A request that was not read to its end leaves a connection that nothing more can come through. */
function send(response: ServerResponse, { status, headers, body }: PageAnswer, complete: boolean): void {
  response.writeHead(status, {
    ...headers,
    'Content-Length': body.length,
    ...(complete ? {} : { Connection: 'close' }),
  });
  response.end(body);
}
