import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import configuration from '../../electron-builder.config.ts';
import { startProgram } from '../../electron/main/program.ts';
import { SCHEMES } from '../../electron/main/scheme.ts';
import { windowOptions } from '../../electron/main/window-options.ts';
import { SECURITY_HEADERS } from '../../electron/pages/security-headers.ts';
import packageJson from '../../package.json';
import { temporaryFolder } from '../cli/temporary.ts';
import { makePage } from './fakes/page.ts';
import { cancellable, fakeShell } from './fakes/shell.ts';

// The items of Electron's published security checklist, by their numbers (from memory), as far as they can be
// held without its binary. 17, the sender of messages, is in program.test.ts; 19, the fuses, in builder-config.test.ts.

const data = temporaryFolder();
const fake = fakeShell({ data, packaged: true });
await startProgram(fake.shell, { page: makePage(data), preload: '/built/preload.cjs' });

const ROOT = resolve(import.meta.dirname, '../..');

/** All source files of a folder with what they hold. */
const sources = (folder: string): readonly (readonly [string, string])[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|tsx|html|css)$/.test(name))
    .map((name) => [join(folder, name), readFileSync(join(ROOT, folder, name), 'utf8')] as const);

const { webPreferences } = windowOptions('/built/preload.cjs', true);

describe('security checklist', () => {
  test('1, 18: no remote content: the one page that is loaded is our own, through a scheme of our own', () => {
    expect(fake.named('loadURL')).toEqual([['app://bundle/index.html']]);
    expect([...fake.schemes.keys()]).toEqual(['app']);
    expect(SCHEMES.map(({ scheme }) => scheme)).toEqual(['app']);
  });

  test('2, 3, 4, 6, 8, 9, 10, 11: the page has a sandbox, isolation, no Node and no web view', () => {
    expect(fake.named('enableSandbox')).toHaveLength(1);
    expect(fake.named('BrowserWindow')[0]?.[0]).toEqual(windowOptions('/built/preload.cjs', true));
    expect(webPreferences).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      devTools: false,
    });
    for (const name of ['enableBlinkFeatures', 'disableBlinkFeatures', 'additionalArguments', 'session']) {
      expect(webPreferences).not.toHaveProperty(name);
    }
  });

  test.each([
    'geolocation',
    'media',
    'notifications',
    'midi',
    'clipboard-read',
    'fullscreen',
    'openExternal',
    'fileSystem',
    'display-capture',
    'hid',
    'serial',
    'usb',
    'local-network-access',
    'unknown',
  ])('5: the permission %s is denied, asked for or looked up', (permission) => {
    const answered: boolean[] = [];
    const request: unknown = fake.permissions['request'];
    const check: unknown = fake.permissions['check'];
    if (typeof request !== 'function' || typeof check !== 'function') throw new Error('no handlers');
    request({}, permission, (granted: boolean) => answered.push(granted), {});
    expect(answered).toEqual([false]);
    expect(check({}, permission, 'app://bundle', {})).toBe(false);
  });

  test('5: writing to the clipboard is allowed, no device is, and nothing is downloaded', () => {
    const { request, check, device }: Record<string, unknown> = fake.permissions;
    if (typeof request !== 'function' || typeof check !== 'function' || typeof device !== 'function') {
      throw new Error('no handlers');
    }
    const answered: boolean[] = [];
    request({}, 'clipboard-sanitized-write', (granted: boolean) => answered.push(granted), {});
    expect([...answered, check({}, 'clipboard-sanitized-write'), device({})]).toEqual([true, true, false]);
    const event = cancellable();
    fake.sessionEvents.emit('will-download', event);
    expect(event.defaultPrevented).toBe(true);
  });

  test('7: the policy allows our own files, no inline script, no evaluation but of wasm, no frames', () => {
    const policy = new Map(
      SECURITY_HEADERS['Content-Security-Policy'].split('; ').map((line) => {
        const [name = '', ...values] = line.split(' ');
        return [name, values] as const;
      }),
    );
    expect(Object.fromEntries(policy)).toEqual({
      'default-src': ["'none'"],
      'script-src': ["'self'", "'wasm-unsafe-eval'"],
      'style-src': ["'self'", "'unsafe-inline'"],
      'img-src': ["'self'", 'data:', 'blob:'],
      'font-src': ["'self'"],
      'connect-src': ["'self'"],
      'worker-src': ["'self'", 'blob:'],
      'object-src': ["'none'"],
      'base-uri': ["'none'"],
      'form-action': ["'none'"],
      'frame-src': ["'none'"],
      'frame-ancestors': ["'none'"],
    });
  });

  test.each(['will-navigate', 'will-frame-navigate', 'will-redirect', 'will-attach-webview'])(
    '12, 13: %s is stopped',
    (name) => {
      const event = cancellable();
      fake.window().contentsEvents.emit(name, event, 'https://example.invalid/');
      expect(event.defaultPrevented).toBe(true);
    },
  );

  test('14: no new window', () => {
    const handler: unknown = fake.named('setWindowOpenHandler')[0]?.[0];
    if (typeof handler !== 'function') throw new Error('no handler');
    expect(handler({ url: 'app://bundle/index.html' })).toEqual({ action: 'deny' });
  });

  test('15: nothing is handed to the system to open', () => {
    const opening = sources('electron').filter(([, text]) => /openExternal|openPath/.test(text));
    expect(opening.map(([file]) => file)).toEqual([]);
  });

  test('11, 12: no page of ours has a web view or asks for pop-ups', () => {
    const asking = sources('renderer').filter(([, text]) =>
      /<webview|allowpopups|window\.open\(/i.test(text),
    );
    expect(asking.map(([file]) => file)).toEqual([]);
  });

  test('1, 4, 6, 8: no switch, session or handler anywhere takes back what the settings say', () => {
    const WEAKER =
      /commandLine|fromPartition|fromPath\(|setCertificateVerifyProc|certificate-error|no-sandbox|disable-web-security|ignore-certificate|remote-debugging|bypassCSP|loadFile\(|webRequest/;
    const weaker = sources('electron').filter(([, text]) => WEAKER.test(text));
    expect(weaker.map(([file]) => file)).toEqual([]);
  });

  test('16: one exact version of Electron is named, and it is the one that is built with', () => {
    const { electron } = packageJson.devDependencies;
    expect(electron).toMatch(/^\d+\.\d+\.\d+$/);
    const lock: unknown = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8'));
    expect(lock).toHaveProperty(['packages', 'node_modules/electron', 'version'], electron);
    expect(configuration.electronVersion ?? electron).toBe(electron);
  });

  test('18: the scheme is standard and secure, and goes past no policy', () => {
    expect(fake.named('registerSchemesAsPrivileged')).toEqual([
      [[{ scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } }]],
    ]);
  });

  test('20: the page gets functions of its own, never the messenger itself', () => {
    const [, preload] = sources('electron/preload').find(([name]) => name.endsWith('preload.ts')) ?? [];
    expect(preload).toBeDefined();
    expect(preload).not.toMatch(/exposeInMainWorld\([^)]*ipcRenderer/);
  });

  test('only main.ts and the preload import what Electron does; all others only its types', () => {
    const importing = sources('electron')
      .filter(([, text]) => /(import (?!type)[^;]*from 'electron'|require\('electron'\))/.test(text))
      .map(([file]) => file);
    expect(importing.toSorted()).toEqual(['electron/main/main.ts', 'electron/preload/preload.ts']);
  });
});
