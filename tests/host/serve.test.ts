import { unzipSync } from 'fflate';
import { createHash } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { serve, type Host } from '../../electron/host/serve.ts';
import { CHANNELS } from '../../shared/contract/channels.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { makePage } from '../main/fakes/page.ts';
import { TAB, tabOf } from '../messages/tabs.ts';

const folder = temporaryFolder();
let host: Host;
const places = () => ({ page: makePage(folder), recovery: join(folder, 'recovery') });

beforeAll(async () => {
  host = await serve(places());
});
afterAll(() => host.stop());

const origin = (): string => new URL(host.address).origin;

/** What the page shows of the printed address. */
const key = (): string => new URL(host.address).hash.slice('#key='.length);

const send = async (channel: string, message: unknown): Promise<unknown> => {
  const response = await fetch(`${origin()}/message/${channel}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', Origin: origin(), 'Overhang-Key': key() },
    body: JSON.stringify(message),
  });
  expect(response.status).toBe(200);
  return response.json();
};

const upload = async (name: string, bytes: Uint8Array): Promise<string> => {
  const response = await fetch(`${origin()}/upload?name=${encodeURIComponent(name)}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/octet-stream', Origin: origin(), 'Overhang-Key': key() },
    body: new Uint8Array(bytes),
  });
  return z.object({ token: z.string() }).parse(await response.json()).token;
};

/** A request with a path that is sent as it is written. */
const raw = (
  path: string,
  headers: Record<string, string> = {},
  method = 'GET',
): Promise<{ status: number; text: string }> =>
  new Promise((resolve, reject) => {
    const { hostname, port } = new URL(host.address);
    const asked = request({ hostname, port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (chunk: string) => (text += chunk));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
    });
    asked.on('error', reject);
    asked.end();
  });

describe('the page', () => {
  test('is served with the security headers, and kept by the browser only where a name has its hash', async () => {
    const kept = await fetch(`${origin()}/assets/main-Ab3_xyz9.js`);
    expect([kept.status, kept.headers.get('cache-control')]).toEqual([
      200,
      'private, max-age=31536000, immutable',
    ]);
    expect(kept.headers.get('content-security-policy')).toContain("default-src 'none'");
    for (const path of ['/', '/assets/main-Ab3_x.js', '/missing.js', '/assets/gone-Ab3_xyz9.js']) {
      const { headers } = await fetch(`${origin()}${path}`);
      expect(headers.get('content-security-policy')).toContain("default-src 'none'");
      expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('cache-control')).toBe('no-store');
      expect(headers.has('access-control-allow-origin')).toBe(false);
    }
    expect(await (await fetch(host.address)).text()).toContain('<title>Page</title>');
  });

  test.each([
    '/../secret.js',
    '/assets/../../secret.js',
    '/%2e%2e/secret.js',
    '/..%2fsecret.js',
    '/..\\secret.js',
    '//secret.js',
    '/.hidden.js',
    '/assets/notes.txt',
    'http://127.0.0.1/secret.js',
  ])('answers 404 to the path %s', async (path) => {
    const { status, text } = await raw(path);
    expect([status, text]).toEqual([404, 'There is no such file.\n']);
  });
});

describe('who may talk to it', () => {
  test('it listens on 127.0.0.1 and nowhere else', async () => {
    expect(host.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#key=[0-9a-f]{64}$/);
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .map(({ address }) => address)
      .filter((address) => address !== '127.0.0.1');
    for (const address of [...others, '::1', '127.0.0.2']) {
      const reached = await new Promise<boolean>((resolve) => {
        const socket = connect({ host: address, port: Number(new URL(host.address).port), timeout: 500 });
        const end = (answer: boolean) => () => (socket.destroy(), resolve(answer));
        socket.on('connect', end(true)).on('error', end(false)).on('timeout', end(false));
      });
      expect([address, reached]).toEqual([address, false]);
    }
  });

  test('another host name, another origin, no origin and another type are turned away', async () => {
    expect((await raw('/', { Host: 'rebound.example.invalid' })).status).toBe(421);
    const json = { 'Content-Type': 'application/json' };
    const path = '/message/app.about';
    expect((await raw(path, { ...json, Origin: 'https://example.invalid' }, 'POST')).status).toBe(403);
    expect((await raw(path, json, 'POST')).status).toBe(403);
    const keyed = { Origin: origin(), 'Overhang-Key': key() };
    expect((await raw(path, { ...keyed, 'Content-Type': 'text/plain' }, 'POST')).status).toBe(415);
    expect((await raw(path, { Origin: 'https://example.invalid' }, 'OPTIONS')).status).toBe(405);
  });
});

describe('messages', () => {
  test.each(CHANNELS)('%s answers JSON to anything', async (channel) => {
    for (const message of [{}, [], null, { source: 1 }, 'text']) {
      expect(z.object({ ok: z.boolean() }).safeParse(await send(channel, message)).success).toBe(true);
    }
  });

  test('what is no JSON, no UTF-8 or no place of ours is told so', async () => {
    const headers = { 'Content-Type': 'application/json', Origin: origin(), 'Overhang-Key': key() };
    const post = async (path: string, body: string | Uint8Array<ArrayBuffer>) =>
      (await fetch(`${origin()}${path}`, { method: 'POST', headers, body })).status;
    expect(await post('/message/app.about', '{')).toBe(400);
    expect(await post('/message/app.about', Uint8Array.of(0x22, 0xff, 0x22))).toBe(400);
    expect(await post('/message/../upload', '{}')).toBe(415);
    expect(await post('/elsewhere', '{}')).toBe(404);
  });

  test('more bytes than any order has are not taken in', async () => {
    const { status } = await fetch(`${origin()}/upload?name=a.csv`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/octet-stream', Origin: origin(), 'Overhang-Key': key() },
      body: new Uint8Array(32 * 1024 * 1024 + 1),
    });
    expect(status).toBe(413);
    expect(await send('app.about', {})).toMatchObject({ ok: true });
  });

  test('about says that it is a browser', async () => {
    expect(await send('app.about', {})).toMatchObject({ ok: true, platform: 'browser' });
  });

  test('without the key, or with that of another start, not even the snapshot of unsaved work is told', async () => {
    await send('document.keep', { tab: TAB, name: 'a', handle: null, text: 'secret' });
    const other = await serve(places());
    const wrong = new URL(other.address).hash.slice('#key='.length);
    await other.stop();
    expect(wrong).not.toBe(key());
    for (const shown of [undefined, '', wrong]) {
      const response = await fetch(`${origin()}/message/document.kept`, {
        method: 'POST',
        headers: {
          'Content-Type': 'application/json',
          Origin: origin(),
          ...(shown === undefined ? {} : { 'Overhang-Key': shown }),
        },
        body: JSON.stringify({ tab: tabOf(2), open: [] }),
      });
      expect(response.status).toBe(403);
      expect(await response.text()).not.toContain('secret');
    }
    await send('document.changed', { tab: TAB, unsaved: false, name: 'a' });
  });

  test('unsaved work outlasts the host', async () => {
    const document = { name: 'a', handle: null, text: '½' };
    const first = host;
    await send('document.keep', { tab: TAB, ...document });
    host = await serve(places());
    await first.stop();
    expect(await send('document.kept', { tab: tabOf(2), open: [] })).toEqual({ ok: true, document });
  });
});

describe('documents', () => {
  test('an upload is opened by its token, once', async () => {
    const source = await upload('Küche 2.csv', Buffer.from('cabinet\n'));
    expect(await send('document.open', { source })).toEqual({
      ok: true,
      cancelled: false,
      name: 'Küche 2.csv',
      handle: null,
      text: 'cabinet\n',
    });
    expect(await send('document.open', { source })).toMatchObject({ ok: false });
  });

  test.each(['../../etc/passwd', 'a.exe', '', '/etc/hosts'])(
    'an upload named %j is not opened',
    async (name) => {
      expect(await send('document.open', { source: await upload(name, Buffer.from('x')) })).toMatchObject({
        ok: false,
      });
    },
  );

  test('the host opens no file of its own', async () => {
    for (const source of [null, join(folder, 'secret.js'), 'file:///etc/passwd']) {
      expect(await send('document.open', { source })).toMatchObject({ ok: false });
    }
  });

  test.each([
    ['Küche (2) *.overhang', 'K%C3%BCche%20%282%29%20-.overhang'],
    ['../../up.json', 'up.json'],
    ['no extension', 'no%20extension.overhang'],
    ['a".csv', 'a-.csv'],
  ])('save of %j gives a download that the browser saves under its name', async (suggestedName, header) => {
    const saved = await send('document.save', { tab: TAB, handle: null, suggestedName, text: '{"½":1}' });
    const { download } = z.object({ download: z.string() }).parse(saved);
    const response = await fetch(`${origin()}${download}`);
    expect(response.headers.get('content-disposition')).toBe(`attachment; filename*=UTF-8''${header}`);
    expect(response.headers.get('content-type')).toBe('application/octet-stream');
    expect(await response.text()).toBe('{"½":1}');
  });

  test('a download that nobody has made is not there', async () => {
    for (const id of ['00000000-0000-4000-8000-000000000000', '../secret.js', '']) {
      expect((await raw(`/download/${id}`)).status).toBe(404);
    }
  });
});

describe('cut files', () => {
  const FILES = { 'manifest.json': '{}', 'dxf/a_mm.dxf': '0\nEOF\n', 'svg/ö_mm.svg': '<svg/>' };

  /** Writes the files in some order and gives back the zip. */
  async function output(paths: readonly (keyof typeof FILES)[]): Promise<Uint8Array> {
    const begun = await send('output.begin', { suggestedName: 'Harbor Library' });
    const { job } = z.object({ job: z.string() }).parse(begun);
    for (const path of paths) {
      const text = FILES[path];
      const sha256 = createHash('sha256').update(text).digest('hex');
      expect(await send('output.write', { job, path, content: text })).toEqual({
        ok: true,
        size: text.length,
        sha256,
      });
    }
    const finished = z
      .object({ place: z.literal('Harbor Library.zip'), download: z.string() })
      .parse(await send('output.finish', { job }));
    return new Uint8Array(await (await fetch(`${origin()}${finished.download}`)).arrayBuffer());
  }

  test('come as a zip with one folder, the same bytes whatever the order of writing', async () => {
    const zip = await output(['manifest.json', 'dxf/a_mm.dxf', 'svg/ö_mm.svg']);
    const read = unzipSync(zip);
    const found = Object.entries(read).map(([path, bytes]) => [path, new TextDecoder().decode(bytes)]);
    expect(Object.fromEntries(found)).toEqual(
      Object.fromEntries(Object.entries(FILES).map(([path, text]) => [`Harbor Library/${path}`, text])),
    );
    expect(Buffer.compare(zip, await output(['svg/ö_mm.svg', 'dxf/a_mm.dxf', 'manifest.json']))).toBe(0);
  });

  test('take no path twice, also not in capitals, and none that leads out', async () => {
    const begun = await send('output.begin', { suggestedName: 'jigs' });
    const { job } = z.object({ job: z.string() }).parse(begun);
    expect(await send('output.write', { job, path: 'a.dxf', content: '' })).toMatchObject({ ok: true });
    for (const path of ['a.dxf', 'A.DXF', '../a.dxf', '/a.dxf']) {
      expect(await send('output.write', { job, path, content: '' })).toMatchObject({ ok: false });
    }
    expect(await send('output.discard', { job })).toEqual({ ok: true });
    expect(await send('output.finish', { job })).toMatchObject({ ok: false });
  });
});

describe('serve', () => {
  test('takes the port that it is given, and says so if it is taken', async () => {
    const port = Number(new URL(host.address).port);
    await expect(serve(places(), port)).rejects.toThrow('EADDRINUSE');
  });

  test('stops with a connection still open, and answers no more', async () => {
    mkdirSync(join(folder, 'other'), { recursive: true });
    const other = await serve({
      page: makePage(join(folder, 'other')),
      recovery: join(folder, 'other/recovery'),
    });
    const { port } = new URL(other.address);
    const socket = connect({ host: '127.0.0.1', port: Number(port) });
    await new Promise((resolve) => socket.once('connect', resolve));
    socket.on('error', () => undefined);
    await other.stop();
    await expect(fetch(other.address)).rejects.toThrow('fetch failed');
    socket.destroy();
  });
});
