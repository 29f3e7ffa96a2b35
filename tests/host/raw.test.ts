import { mkdirSync, writeFileSync } from 'node:fs';
import { connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serve, type Host } from '../../electron/host/serve.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { makePage } from '../main/fakes/page.ts';

// Bytes as they are, past any client library that would mend them: RFC 9110 and RFC 9112, from memory.

const folder = temporaryFolder();
let host: Host;

/** ms. Short, so that a sender who keeps the host waiting is turned away while the test looks on. */
const PATIENCE = { head: 400, whole: 900, every: 100 };

beforeAll(async () => {
  const page = makePage(folder);
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.js'), 'secret');
  host = await serve({ page, recovery: join(folder, 'recovery') }, 0, PATIENCE);
});
afterAll(() => host.stop());

const port = (): number => Number(new URL(host.address).port);
const authority = (): string => `127.0.0.1:${port()}`;
const key = (): string => new URL(host.address).hash.slice('#key='.length);

interface Answer {
  /** 0: the connection was closed without a word. */
  readonly status: number;
  readonly text: string;
}

/** Sends bytes, `more` of them one after the other later on, and gives what comes back until the host closes. */
function raw(
  bytes: string,
  more: (socket: Socket) => Promise<void> = async () => undefined,
): Promise<Answer> {
  return new Promise((resolve) => {
    const socket = connect({ host: '127.0.0.1', port: port() });
    let text = '';
    socket.setEncoding('latin1');
    socket.on('data', (chunk: string) => (text += chunk));
    socket.on('error', () => undefined);
    socket.on('close', () => resolve({ status: Number(/^HTTP\/1\.1 (\d{3})/.exec(text)?.[1] ?? 0), text }));
    socket.write(bytes, 'latin1');
    void more(socket);
  });
}

const request = (line: string, headers: readonly string[], body = ''): Promise<Answer> =>
  raw(`${[line, ...headers, 'Connection: close'].join('\r\n')}\r\n\r\n${body}`);

const ours = (): string => `Host: ${authority()}`;
const get = (target: string): Promise<Answer> => request(`GET ${target} HTTP/1.1`, [ours()]);

/** What our own page sends with a message. */
const own = (): readonly string[] => [
  ours(),
  `Origin: http://${authority()}`,
  `Overhang-Key: ${key()}`,
  'Content-Type: application/json',
];
const ABOUT = 'POST /message/app.about HTTP/1.1';
const BODY = ['Content-Length: 2'];

const isAlive = async (): Promise<boolean> =>
  (await request(ABOUT, [...own(), ...BODY], '{}')).status === 200;

describe('the target of a request', () => {
  test('the page and a message are there', async () => {
    expect((await get('/')).status).toBe(200);
    expect(await isAlive()).toBe(true);
  });

  test.each([
    '/../secret.js',
    '/assets/../../secret.js',
    '/%2e%2e/secret.js',
    '/%2E%2E%2Fsecret.js',
    '/..%2fsecret.js',
    '/%252e%252e/secret.js',
    '/..%5csecret.js',
    '/..\\secret.js',
    '\\..\\secret.js',
    '/assets\\..\\..\\secret.js',
    '//secret.js',
    '/./secret.js',
    '/assets/%00.js',
    '/C:/secret.js',
    '/secret.js::$DATA',
    '/download/../secret.js',
    '/message/../secret.js',
    '*',
    'secret.js',
  ])('leads to nothing outside of the page: %s', async (target) => {
    const { status, text } = await get(target);
    expect([400, 404]).toContain(status);
    expect(text).not.toContain('\r\n\r\nsecret');
  });

  test('in absolute form leads nowhere, whoever it names', async () => {
    for (const site of [authority(), 'rebound.example.invalid', `${authority()}@example.invalid`]) {
      expect((await get(`http://${site}/`)).status).toBe(404);
      expect((await get(`http://${site}/../secret.js`)).status).toBe(404);
    }
    const { status } = await request(
      `POST http://${authority()}/message/app.about HTTP/1.1`,
      [...own(), ...BODY],
      '{}',
    );
    expect(status).toBe(404);
  });

  test('with a NUL or a blank in it is no request', async () => {
    expect((await get('/\u0000')).status).toBe(400);
    expect((await get('/ /secret.js')).status).toBe(400);
  });

  test('CONNECT, an upgrade and an unknown method open nothing', async () => {
    expect([0, 400, 405]).toContain((await request(`CONNECT ${authority()} HTTP/1.1`, [ours()])).status);
    expect((await request('BREW / HTTP/1.1', [ours()])).status).toBe(400);
    const upgrade = ['Upgrade: websocket', 'Sec-WebSocket-Key: x', 'Sec-WebSocket-Version: 13'];
    const { status } = await request('GET /message/app.about HTTP/1.1', [ours(), ...upgrade]);
    expect(status).toBe(404);
  });
});

describe('the Host header', () => {
  test.each(['rebound.example.invalid', 'localhost', '127.0.0.1', '[::1]', '0.0.0.0', ''])(
    '%j is turned away, as after DNS rebinding, with the right port too',
    async (name) => {
      for (const value of [name, `${name}:${port()}`]) {
        if (value === authority()) continue;
        const { status } = await request('GET / HTTP/1.1', [`Host: ${value}`]);
        expect([400, 421]).toContain(status);
        const sent = own().filter((line) => !line.startsWith('Host'));
        const posted = await request(ABOUT, [`Host: ${value}`, ...sent, ...BODY], '{}');
        expect([400, 421]).toContain(posted.status);
      }
    },
  );

  test('twice is refused, in either order and also when both are right', async () => {
    const foreign = 'Host: example.invalid';
    for (const hosts of [
      [ours(), foreign],
      [foreign, ours()],
      [ours(), ours()],
    ]) {
      expect((await request('GET / HTTP/1.1', hosts)).status).toBe(400);
    }
  });

  test('missing is refused, also by HTTP/1.0, which otherwise is answered and closed', async () => {
    expect((await request('GET / HTTP/1.1', [])).status).toBe(400);
    expect((await raw('GET / HTTP/1.0\r\n\r\n')).status).toBe(400);
    expect((await raw(`GET / HTTP/1.0\r\n${ours()}\r\n\r\n`)).status).toBe(200);
    expect((await raw('GET /\r\n\r\n')).status).toBe(400);
  });

  test('folded, padded and split lines smuggle nothing in', async () => {
    expect((await request('GET / HTTP/1.1', [`Host:\r\n ${authority()}`])).status).not.toBe(200);
    expect((await request('GET / HTTP/1.1', [`Host : ${authority()}`])).status).toBe(400);
    expect((await request('GET / HTTP/1.1', [`${ours()}\rX: y`])).status).toBe(400);
  });
});

describe('the Origin of a message', () => {
  const without = (name: string): readonly string[] => own().filter((line) => !line.startsWith(name));

  test('missing, null, foreign or twice is turned away', async () => {
    const own2 = `Origin: http://${authority()}`;
    for (const origins of [
      [],
      ['Origin: null'],
      ['Origin: '],
      ['Origin: http://example.invalid'],
      [`Origin: http://localhost:${port()}`],
      [own2, 'Origin: http://example.invalid'],
      [own2, own2],
    ]) {
      const { status } = await request(ABOUT, [...without('Origin'), ...origins, ...BODY], '{}');
      expect([origins, status]).toEqual([origins, 403]);
    }
  });

  test('right, but without the key or with a wrong one, is turned away', async () => {
    expect((await request(ABOUT, [...without('Overhang-Key'), ...BODY], '{}')).status).toBe(403);
    const wrong = `Overhang-Key: ${'0'.repeat(64)}`;
    expect((await request(ABOUT, [...without('Overhang-Key'), wrong, ...BODY], '{}')).status).toBe(403);
  });
});

describe('sizes and patience', () => {
  test('a head that is too large, in one header or in many, is refused', async () => {
    expect((await request('GET / HTTP/1.1', [ours(), `X: ${'x'.repeat(20_000)}`])).status).toBe(431);
    const many = Array.from({ length: 3000 }, (_, index) => `X-${index}: y`);
    expect((await request('GET / HTTP/1.1', [ours(), ...many])).status).toBe(431);
    expect((await get(`/${'a'.repeat(20_000)}`)).status).toBe(431);
    expect(await isAlive()).toBe(true);
  });

  test('a body that says that it is too large is refused before it is sent', async () => {
    for (const length of ['67108865', '9999999999999999']) {
      expect((await request(ABOUT, [...own(), `Content-Length: ${length}`])).status).toBe(413);
    }
    for (const length of ['-1', '1e9', '0x10', '2, 3']) {
      expect((await request(ABOUT, [...own(), `Content-Length: ${length}`])).status).toBe(400);
    }
  });

  test('a body in chunks that grows too large is cut off', async () => {
    const chunk = `100000\r\n${' '.repeat(0x100000)}\r\n`;
    const { status } = await raw(
      `${[ABOUT, ...own(), 'Transfer-Encoding: chunked'].join('\r\n')}\r\n\r\n`,
      async (socket) => {
        for (let sent = 0; sent < 80 && !socket.destroyed; sent += 1) {
          if (!socket.write(chunk))
            await Promise.race([new Promise((go) => socket.once('drain', go)), wait(200)]);
        }
      },
    );
    // The connection may be gone before the answer is read: what counts is that no more is taken in.
    expect([0, 408, 413]).toContain(status);
    expect(await isAlive()).toBe(true);
  });

  test('a length beside chunks, with which two readers can be set against each other, is refused', async () => {
    const both = [...own(), 'Content-Length: 2', 'Transfer-Encoding: chunked'];
    expect((await request(ABOUT, both, '{}')).status).toBe(400);
    expect((await request(ABOUT, [...own(), 'Content-Length: 2', 'Content-Length: 3'], '{}')).status).toBe(
      400,
    );
  });

  test('a head and a body that come too slowly are given up, and others are answered meanwhile', async () => {
    const drip = async (socket: Socket): Promise<void> => {
      while (!socket.destroyed) {
        socket.write('x');
        await wait(50);
      }
    };
    const slow = Promise.all([
      raw(`GET / HTTP/1.1\r\n${ours()}\r\nX: `, drip),
      raw(`${[ABOUT, ...own(), 'Content-Length: 1000000'].join('\r\n')}\r\n\r\n`, drip),
    ]);
    expect(await isAlive()).toBe(true);
    for (const { status } of await slow) expect([0, 408]).toContain(status);
  });

  test('a hundred connections that say nothing hinder nobody', async () => {
    const idle = Array.from({ length: 100 }, () => connect({ host: '127.0.0.1', port: port() }));
    for (const socket of idle) socket.on('error', () => undefined);
    expect(await isAlive()).toBe(true);
    for (const socket of idle) socket.destroy();
  });
});
