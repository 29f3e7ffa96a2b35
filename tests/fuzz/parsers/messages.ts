import * as fc from 'fast-check';
import { IncomingMessage } from 'node:http';
import { Socket } from 'node:net';
import { resolve } from 'node:path';
import { answerRequest } from '../../../electron/host/answer-request.ts';
import { createShelf } from '../../../electron/host/shelf.ts';
import { createRouter } from '../../../electron/messages/router.ts';
import { CHANNELS } from '../../../shared/contract/channels.ts';
import { memoryPorts } from '../../messages/memory-ports.ts';
import { TAB } from '../../messages/tabs.ts';
import { anyJson, anyText, mangledJson, textOf } from '../arbitraries.ts';
import { fuzzed, type Breaches, type Fuzzed } from '../fuzzed.ts';
import { reasonBreaches } from '../rules.ts';
import { PATHS } from './host-paths.ts';

const REQUESTS: readonly (readonly [string, unknown])[] = [
  ['document.open', { source: 'h' }],
  ['document.save', { tab: TAB, handle: null, suggestedName: 'a.overhang', text: '{}' }],
  ['document.keep', { tab: TAB, name: 'a', handle: null, text: '{}' }],
  ['document.kept', { tab: TAB, open: [TAB.id] }],
  ['document.changed', { tab: TAB, unsaved: true, name: 'a' }],
  ['output.begin', { suggestedName: 'jigs' }],
  ['output.write', { job: 'x', path: 'a.dxf', content: { base64: 'AQID' } }],
  ['output.finish', { job: 'x' }],
  ['output.show', { place: '/' }],
  ['app.about', {}],
];

const router = createRouter(memoryPorts().ports);
const message = fc.oneof(
  ...REQUESTS.map(([channel, request]) => fc.tuple(fc.constant(channel), mangledJson([request]))),
  fc.tuple(
    fc.oneof(fc.constantFrom<string>(...CHANNELS, '__proto__', 'constructor', 'toString'), anyText),
    anyJson,
  ),
);

const isReply = (value: unknown): value is { readonly ok: boolean } =>
  typeof value === 'object' && value !== null && 'ok' in value && typeof value.ok === 'boolean';

const AUTHORITY = '127.0.0.1:8080';
const KEY = 'k'.repeat(64);
const host = {
  // A folder in which the only files are source: none of a kind that is served at the top but in its own folders.
  page: resolve('shared'),
  lock: { authority: AUTHORITY, key: KEY },
  router,
  uploads: createShelf(2, 1_000_000),
  downloads: createShelf(2, 1_000_000),
};
const headers = fc.record(
  {
    host: fc.oneof(fc.constant(AUTHORITY), textOf([AUTHORITY, 'localhost', ':8080'])),
    origin: fc.oneof(fc.constant(`http://${AUTHORITY}`), textOf(['http://', AUTHORITY, 'null'])),
    'overhang-key': fc.oneof(fc.constant(KEY), anyText),
    'content-type': fc.oneof(
      fc.constantFrom('application/json', 'application/octet-stream', 'text/plain'),
      anyText,
    ),
    'content-length': fc.oneof(fc.nat().map(String), fc.constantFrom('-1', '1e99', 'NaN', ''), anyText),
    'sec-fetch-site': fc.constantFrom('same-origin', 'cross-site', 'none', ''),
  },
  { requiredKeys: [] },
);
/** Most of them come from our own page, so that what lies behind the gate is reached too. */
const goodHeaders = fc.constantFrom('application/json', 'application/octet-stream').map((type) => ({
  host: AUTHORITY,
  origin: `http://${AUTHORITY}`,
  'overhang-key': KEY,
  'content-type': type,
}));
const STATUSES = new Set([200, 400, 403, 404, 405, 413, 415, 421]);

interface Asked {
  readonly method: string;
  readonly url: string;
  readonly headers: Record<string, string>;
  readonly body: string;
}

async function answerBreaches({ method, url, headers: sent, body }: Asked): Promise<Breaches> {
  const request = new IncomingMessage(new Socket());
  Object.assign(request, { method, url, headers: sent, rawHeaders: Object.entries(sent).flat() });
  request.push(body);
  request.push(null);
  const answer = await answerRequest(host, request);
  const ours = sent['host'] === AUTHORITY && sent['overhang-key'] === KEY;
  return [
    ...(STATUSES.has(answer.status) ? [] : [`status ${answer.status}`]),
    ...(answer.headers['X-Content-Type-Options'] === 'nosniff' ? [] : ['no security headers']),
    ...(answer.status === 200 && method === 'POST' && !ours ? ['let a stranger in'] : []),
    ...(/[\r\n]/.test(Object.values(answer.headers).join('')) ? ['a line break in a header'] : []),
  ];
}

export const MESSAGE_PARSERS: readonly Fuzzed[] = [
  fuzzed('message', {
    inputs: message,
    ofText: (text): [string, unknown] => [text, text],
    weight: 2,
    async check([channel, request]) {
      const reply = await router.answer(channel, request);
      if (!isReply(reply)) return ['no reply'];
      return 'reason' in reply && typeof reply.reason === 'string'
        ? reasonBreaches(reply.reason, channel)
        : [];
    },
  }),
  fuzzed<Asked>('request to the browser host', {
    inputs: fc.record({
      method: fc.constantFrom('GET', 'POST', 'POST', 'POST', 'HEAD', 'PUT', 'OPTIONS', ''),
      url: fc.oneof(
        textOf(PATHS),
        fc.constantFrom(...CHANNELS).map((channel) => `/message/${channel}`),
      ),
      headers: fc.oneof(headers, goodHeaders),
      body: fc.oneof(fc.json(), anyText),
    }),
    ofText: (text) => ({
      method: 'POST',
      url: `/upload?name=${text}`,
      headers: {
        host: AUTHORITY,
        origin: `http://${AUTHORITY}`,
        'overhang-key': KEY,
        'content-type': 'application/octet-stream',
      },
      body: text,
    }),
    weight: 2,
    check: answerBreaches,
  }),
];
