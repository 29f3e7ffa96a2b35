import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { Refusal } from '../../electron/files/refusal.ts';
import { createRouter } from '../../electron/messages/router.ts';
import { CHANNELS } from '../../shared/contract/channels.ts';
import { MESSAGES } from '../../shared/contract/messages.ts';
import type { OutputFolder } from '../../electron/messages/ports.ts';
import { memoryPorts } from './memory-ports.ts';
import { TAB } from './tabs.ts';

/** A request that fits, for every channel. */
const REQUESTS = {
  'document.open': { source: 'h' },
  'document.save': { tab: TAB, handle: null, suggestedName: 'a.overhang', text: '{}' },
  'document.recent': {},
  'document.keep': { tab: TAB, name: 'a', handle: null, text: '{}' },
  'document.kept': { tab: TAB, open: [TAB.id] },
  'document.changed': { tab: TAB, unsaved: true, name: 'a' },
  'output.begin': { suggestedName: 'jigs' },
  'output.write': { job: 'x', path: 'a.dxf', content: '' },
  'output.finish': { job: 'x' },
  'output.discard': { job: 'x' },
  'output.show': { place: '/' },
  'app.about': {},
} as const satisfies Record<keyof typeof MESSAGES, unknown>;

const failed = z.strictObject({ ok: z.literal(false), reason: z.string() });

const begin = async (router: ReturnType<typeof createRouter>): Promise<string> => {
  const begun = await router.answer('output.begin', { suggestedName: 'jigs' });
  return z.object({ job: z.string() }).parse(begun).job;
};

describe('answer', () => {
  test.each(CHANNELS)('%s gives a reply that fits the contract', async (channel) => {
    const router = createRouter(memoryPorts().ports);
    const reply = await router.answer(channel, REQUESTS[channel]);
    const fits = MESSAGES[channel].reply.safeParse(reply).success;
    expect(fits ? 'fits' : reply).toBe('fits');
  });

  test.each(CHANNELS)(
    '%s refuses a request with a key too many, and asks nothing of anyone',
    async (channel) => {
      const { ports, calls } = memoryPorts();
      const reply = await createRouter(ports).answer(channel, { ...REQUESTS[channel], path: '/etc/passwd' });
      expect(failed.safeParse(reply).success ? 'failed' : reply).toBe('failed');
      expect(calls).toEqual([]);
    },
  );

  property.prop([fc.constantFrom(...CHANNELS), fc.jsonValue()], { seed: 20260303, numRuns: 1000 })(
    'never rejects, whatever is sent',
    async (channel, request) => {
      const router = createRouter(memoryPorts().ports);
      const reply = await router.answer(channel, request);
      const fits = MESSAGES[channel].reply.safeParse(reply).success || failed.safeParse(reply).success;
      expect(fits ? 'fits' : reply).toBe('fits');
    },
  );

  test.each(['document.delete', 'constructor', '__proto__', ''])('knows no message %j', async (channel) => {
    const reply = await createRouter(memoryPorts().ports).answer(channel, {});
    expect(failed.safeParse(reply).success).toBe(true);
  });

  test('a port that throws becomes a failure with its reason', async () => {
    const { ports } = memoryPorts();
    const open = () => Promise.reject(new Refusal('a.csv is a folder'));
    const router = createRouter({ ...ports, documents: { ...ports.documents, open } });
    expect(await router.answer('document.open', { source: 'h' })).toEqual({
      ok: false,
      reason: 'a.csv is a folder',
    });
  });

  test('a reply that does not fit the contract never leaves', async () => {
    const { ports } = memoryPorts();
    const recent = async () => [{ handle: 'h', name: 'a', folder: '/home', secret: 1 }];
    const router = createRouter({ ...ports, documents: { ...ports.documents, recent } });
    expect(failed.safeParse(await router.answer('document.recent', {})).success).toBe(true);
  });
});

describe('documents', () => {
  test('open tells where the bytes stop being UTF-8', async () => {
    const { ports } = memoryPorts();
    const open = async () => ({ name: 'a.csv', handle: 'h', bytes: Uint8Array.of(0x61, 0x0a, 0xff) });
    const router = createRouter({ ...ports, documents: { ...ports.documents, open } });
    expect(await router.answer('document.open', { source: 'h' })).toEqual({
      ok: false,
      reason: 'a.csv: The file is not UTF-8 text: byte 3, in line 2, is FF; save it as CSV UTF-8.',
    });
  });

  test('a save settles what was kept; one that is cancelled does not', async () => {
    const { ports, calls } = memoryPorts();
    const save = { tab: TAB, handle: null, suggestedName: 'a.overhang', text: '{}' };
    await createRouter(ports).answer('document.save', save);
    expect(calls).toEqual(['save null a.overhang {}', 'settle']);
    const cancelling = { ...ports, documents: { ...ports.documents, save: async () => null } };
    calls.length = 0;
    expect(await createRouter(cancelling).answer('document.save', save)).toEqual({
      ok: true,
      cancelled: true,
    });
    expect(calls).toEqual([]);
  });

  test('a save of a file that was changed outside settles nothing, and says so', async () => {
    const { ports, calls } = memoryPorts();
    const changed = async () => ({ changedOutside: 'a.overhang' });
    const router = createRouter({ ...ports, documents: { ...ports.documents, save: changed } });
    const save = { tab: TAB, handle: 'h', suggestedName: 'a.overhang', text: '{}' };
    expect(await router.answer('document.save', save)).toEqual({
      ok: true,
      cancelled: true,
      changedOutside: 'a.overhang',
    });
    expect(calls).toEqual([]);
  });

  test('a save of what is kept beside the order settles nothing', async () => {
    const { ports, calls } = memoryPorts();
    const save = { tab: null, handle: null, suggestedName: 'laser.json', text: '{}' };
    await createRouter(ports).answer('document.save', save);
    expect(calls).toEqual(['save null laser.json {}']);
  });

  test.each(['../../etc/passwd', 'A0000000-0000-4000-8000-000000000001', ''])(
    'keep takes no tab named %j',
    async (id) => {
      const router = createRouter(memoryPorts().ports);
      const keep = { tab: { ...TAB, id }, name: 'a', handle: null, text: '{}' };
      expect(await router.answer('document.keep', keep)).toEqual({
        ok: false,
        reason: 'document.keep: Field tab.id: must be a UUID in small letters',
      });
    },
  );

  test('changed forgets what was kept only when nothing is unsaved', async () => {
    const { ports, calls } = memoryPorts();
    const router = createRouter(ports);
    await router.answer('document.changed', { tab: TAB, unsaved: true, name: 'a' });
    await router.answer('document.changed', { tab: TAB, unsaved: false, name: 'a' });
    expect(calls).toEqual(['changed true a', 'changed false a', 'forget']);
  });

  test('kept gives back what keep was given', async () => {
    const router = createRouter(memoryPorts().ports);
    const document = { name: 'a', handle: null, text: '½' };
    expect(await router.answer('document.kept', { tab: TAB, open: [] })).toEqual({
      ok: true,
      document: null,
    });
    await router.answer('document.keep', { tab: TAB, ...document });
    expect(await router.answer('document.kept', { tab: TAB, open: [] })).toEqual({ ok: true, document });
  });
});

describe('output', () => {
  test('write goes only to a folder that was begun and not yet finished', async () => {
    const { ports, calls } = memoryPorts();
    const router = createRouter(ports);
    const job = await begin(router);
    const write = { job, path: 'dxf/a.dxf', content: 'abc' };
    expect(await router.answer('output.write', write)).toEqual({ ok: true, size: 3, sha256: 'x' });
    await router.answer('output.finish', { job });
    expect(failed.safeParse(await router.answer('output.write', write)).success).toBe(true);
    expect(calls).toEqual(['begin jigs', 'write dxf/a.dxf']);
  });

  test('write hands on text as text and base64 as the bytes that it stands for', async () => {
    const got: unknown[] = [];
    const folder: OutputFolder = {
      write: async (_path, content) => {
        got.push(content);
        return { size: content.length, sha256: 'x' };
      },
      finish: async () => ({ place: '/home/jigs' }),
      discard: async () => undefined,
    };
    const { ports } = memoryPorts();
    const router = createRouter({ ...ports, output: { ...ports.output, begin: async () => folder } });
    const job = await begin(router);
    const write = (content: unknown) => router.answer('output.write', { job, path: 'a.pdf', content });
    await write('½');
    await write({ base64: Buffer.from([0, 255, 10]).toString('base64') });
    expect(got).toEqual(['½', new Uint8Array([0, 255, 10])]);
    expect(failed.safeParse(await write({ base64: 'no base64!' })).success).toBe(true);
    expect(failed.safeParse(await write([1, 2])).success).toBe(true);
    expect(got).toHaveLength(2);
  });

  test.each(['../a', '/a', 'a\\b', 'a/../../b'])('write never passes on the path %j', async (path) => {
    const { ports, calls } = memoryPorts();
    const router = createRouter(ports);
    const job = await begin(router);
    expect(failed.safeParse(await router.answer('output.write', { job, path, content: '' })).success).toBe(
      true,
    );
    expect(calls).toEqual(['begin jigs']);
  });

  test('finish that fails discards the folder and says why', async () => {
    const { ports, calls } = memoryPorts();
    const output = {
      ...ports.output,
      begin: async () => ({
        write: async () => ({ size: 0, sha256: '' }),
        finish: () => Promise.reject(new Refusal('/home/jigs holds other files')),
        discard: async () => void calls.push('discard'),
      }),
    };
    const router = createRouter({ ...ports, output });
    const reply = await router.answer('output.finish', { job: await begin(router) });
    expect(reply).toEqual({
      ok: false,
      reason: 'the folder could not be put in its place: /home/jigs holds other files',
    });
    expect(calls).toEqual(['discard']);
  });

  test('show takes only a place that a finish has given', async () => {
    const { ports, calls } = memoryPorts();
    const router = createRouter(ports);
    expect(failed.safeParse(await router.answer('output.show', { place: '/home/jigs' })).success).toBe(true);
    await router.answer('output.finish', { job: await begin(router) });
    expect(await router.answer('output.show', { place: '/home/jigs' })).toEqual({ ok: true });
    expect(calls).toEqual(['begin jigs', 'show /home/jigs']);
  });

  test('close discards what is unfinished, and a few unfinished folders are the most', async () => {
    const { ports, calls } = memoryPorts();
    const router = createRouter(ports);
    for (let count = 0; count < 4; count += 1) await begin(router);
    expect(failed.safeParse(await router.answer('output.begin', { suggestedName: 'jigs' })).success).toBe(
      true,
    );
    await router.close();
    expect(calls.filter((call) => call === 'discard jigs')).toHaveLength(4);
  });
});
