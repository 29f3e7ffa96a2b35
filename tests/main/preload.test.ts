import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { beforeAll, describe, expect, test } from 'vitest';
import { build } from 'vite';
import { NOTICES, type Bridge } from '../../shared/contract/bridge.ts';
import { CHANNELS } from '../../shared/contract/channels.ts';
import { temporaryFolder } from '../cli/temporary.ts';

const folder = temporaryFolder();
let script = '';

beforeAll(async () => {
  await build({ configFile: 'vite.preload.config.ts', build: { outDir: folder } });
  script = readFileSync(join(folder, 'preload.cjs'), 'utf8');
});

/** Runs the built preload as a sandboxed window does: with `require('electron')` and nothing else of Node. */
function load() {
  const calls: (readonly unknown[])[] = [];
  const listeners = new Map<string, (event: unknown, word: string) => void>();
  const worlds: Record<string, Bridge<unknown>> = {};
  const electron = {
    contextBridge: {
      exposeInMainWorld: (name: string, bridge: Bridge<unknown>) => void (worlds[name] = bridge),
    },
    ipcRenderer: {
      invoke: async (...args: readonly unknown[]) => (calls.push(['invoke', ...args]), 'reply'),
      send: (...args: readonly unknown[]) => void calls.push(['send', ...args]),
      on: (name: string, listener: (event: unknown, word: string) => void) =>
        void listeners.set(name, listener),
      off: (name: string) => void listeners.delete(name),
    },
    webUtils: { getPathForFile: (file: unknown) => `/path/of/${String(file)}` },
  };
  const require = (name: string): unknown => {
    if (name !== 'electron') throw new Error(`a sandboxed preload cannot load ${name}`);
    return electron;
  };
  runInNewContext(script, { require, exports: {}, module: {} });
  const bridge = worlds['overhang'];
  if (bridge === undefined) throw new Error('nothing was given to the page');
  return { bridge, calls, listeners, worlds };
}

describe('preload', () => {
  test('is one file, and below 1 kB beyond its list of channels', () => {
    // The papers of the build lie beside it.
    expect(readdirSync(folder).filter((name) => name.endsWith('js'))).toEqual(['preload.cjs']);
    const channels = CHANNELS.join('').length + 3 * CHANNELS.length;
    expect(script.length - channels).toBeLessThan(1000);
  });

  test('gives the page four functions and nothing of Electron', () => {
    const { bridge, worlds } = load();
    expect(Object.keys(worlds)).toEqual(['overhang']);
    expect(Object.keys(bridge).toSorted()).toEqual(['onAction', 'onOffered', 'openDropped', 'send']);
    for (const member of Object.values(bridge)) expect(typeof member).toBe('function');
  });

  test('send passes on the messages of the contract and no other', async () => {
    const { bridge, calls } = load();
    for (const channel of CHANNELS) {
      await Reflect.apply(bridge.send, undefined, [channel, { a: 1 }, 'more']);
    }
    expect(calls).toEqual(CHANNELS.map((channel) => ['invoke', channel, { a: 1 }]));
    calls.length = 0;
    for (const channel of ['ELECTRON_BROWSER_WINDOW', NOTICES.dropped, NOTICES.action, '', undefined]) {
      await expect(Reflect.apply(bridge.send, undefined, [channel, {}])).rejects.toThrow('unknown message');
    }
    expect(calls).toEqual([]);
  });

  test('openDropped sends the path that the system knows the file by', async () => {
    const { bridge, calls } = load();
    await bridge.openDropped('file');
    expect(calls).toEqual([['invoke', NOTICES.dropped, '/path/of/file']]);
  });

  test('listeners get the word alone, not the event that came with it, until they end', () => {
    const { bridge, calls, listeners } = load();
    const heard: (readonly unknown[])[] = [];
    const ends = [
      bridge.onAction((...args: readonly unknown[]) => void heard.push(args)),
      bridge.onOffered((...args: readonly unknown[]) => void heard.push(args)),
    ];
    expect(calls).toEqual([['send', NOTICES.listening]]);
    listeners.get(NOTICES.action)?.({ sender: 'secret' }, 'file.save');
    listeners.get(NOTICES.offered)?.({ sender: 'secret' }, 'handle');
    expect(heard).toEqual([['file.save'], ['handle']]);
    for (const end of ends) end();
    expect(listeners.size).toBe(0);
  });
});
