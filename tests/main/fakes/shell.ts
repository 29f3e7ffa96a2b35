import type * as electron from 'electron';
import { EventEmitter } from 'node:events';
import { ORIGIN } from '../../../electron/main/scheme.ts';
import type { Shell } from '../../../electron/main/shell.ts';

type Members<T> = Partial<Record<keyof T, unknown>>;
type Call = readonly [name: string, ...args: readonly unknown[]];

/** What the fake dialogs answer next. */
export interface Answers {
  readonly open: (string | null)[];
  readonly save: (string | null)[];
  readonly box: number[];
}

interface FakeOptions {
  readonly data: string;
  readonly first?: boolean;
  readonly packaged?: boolean;
}

/**
 * Electron as far as the program uses it. Each part's members are checked against Electron's own types, so
 * that a member that Electron does not have breaks the type check. Every call is noted in `calls`.
 */
export function fakeShell({ data, first = true, packaged = false }: FakeOptions) {
  const calls: Call[] = [];
  const note =
    (name: string) =>
    (...args: readonly unknown[]): void =>
      void calls.push([name, ...args]);
  const answers: Answers = { open: [], save: [], box: [] };
  const invoked = new Map<string, (event: unknown, request: unknown) => unknown>();
  const told = new EventEmitter();
  const appEvents = new EventEmitter();
  const sessionEvents = new EventEmitter();
  const schemes = new Map<string, (request: Request) => Promise<Response>>();
  const permissions: Record<string, (...args: readonly never[]) => unknown> = {};
  const windows: ReturnType<typeof fakeWindow>[] = [];

  const app = {
    enableSandbox: note('enableSandbox'),
    setAppUserModelId: note('setAppUserModelId'),
    requestSingleInstanceLock: () => (note('requestSingleInstanceLock')(), first),
    quit: note('quit'),
    whenReady: async () => note('whenReady')(),
    getPath: () => data,
    addRecentDocument: note('addRecentDocument'),
    isPackaged: packaged,
    on: appEvents.on.bind(appEvents),
  } satisfies Members<electron.App>;

  const ipcMain = {
    handle: (channel: string, handler: (event: unknown, request: unknown) => unknown) =>
      void invoked.set(channel, handler),
    on: told.on.bind(told),
  } satisfies Members<electron.IpcMain>;

  const dialog = {
    showOpenDialog: async (...args: readonly unknown[]) => {
      note('showOpenDialog')(...args);
      const path = answers.open.shift() ?? null;
      return { canceled: path === null, filePaths: path === null ? [] : [path] };
    },
    showSaveDialog: async (...args: readonly unknown[]) => {
      note('showSaveDialog')(...args);
      const path = answers.save.shift() ?? null;
      return { canceled: path === null, filePath: path ?? '' };
    },
    showMessageBox: async (...args: readonly unknown[]) => {
      note('showMessageBox')(...args);
      return { response: answers.box.shift() ?? 2 };
    },
  } satisfies Members<electron.Dialog>;

  const keep = (name: string) => (handler: (...args: readonly never[]) => unknown) =>
    void (permissions[name] = handler);
  const defaultSession = {
    setPermissionRequestHandler: keep('request'),
    setPermissionCheckHandler: keep('check'),
    setDevicePermissionHandler: keep('device'),
    on: sessionEvents.on.bind(sessionEvents),
  } satisfies Members<electron.Session>;

  const protocol = {
    registerSchemesAsPrivileged: note('registerSchemesAsPrivileged'),
    handle: (scheme: string, handler: (request: Request) => Promise<Response>) =>
      void schemes.set(scheme, handler),
  } satisfies Members<electron.Protocol>;

  const Menu = {
    setApplicationMenu: note('setApplicationMenu'),
    buildFromTemplate: (template: unknown) => template,
  } satisfies Members<typeof electron.Menu>;

  const systemShell = { showItemInFolder: note('showItemInFolder') } satisfies Members<electron.Shell>;

  function BrowserWindow(options: unknown) {
    note('BrowserWindow')(options);
    const window = fakeWindow(note);
    windows.push(window);
    appEvents.emit('web-contents-created', {}, window.webContents);
    return window;
  }

  const parts = {
    app,
    BrowserWindow,
    dialog,
    ipcMain,
    Menu,
    protocol,
    session: { defaultSession } satisfies Members<typeof electron.session>,
    shell: systemShell,
  } satisfies Record<keyof Shell, unknown>;

  const windowNow = () => {
    const window = windows.at(-1);
    if (window === undefined) throw new Error('there is no window');
    return window;
  };
  /** What a message from our own page comes with. */
  const fromPage = () => ({
    sender: windowNow().webContents,
    senderFrame: { parent: null, origin: ORIGIN, url: `${ORIGIN}/index.html` },
  });
  return {
    // The one place where the fake is taken for the real thing; its members were checked above.
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion
    shell: parts as unknown as Shell,
    calls,
    answers,
    appEvents,
    sessionEvents,
    schemes,
    permissions,
    windows,
    window: windowNow,
    fromPage,
    channels: () => [...invoked.keys()],
    send: async (channel: string, request: unknown, event: unknown = fromPage()): Promise<unknown> =>
      invoked.get(channel)?.(event, request),
    tell: (notice: string, event: unknown = fromPage()): void => void told.emit(notice, event),
    named: (name: string): readonly (readonly unknown[])[] =>
      calls.filter(([called]) => called === name).map(([, ...args]) => args),
  };
}

function fakeWindow(note: (name: string) => (...args: readonly unknown[]) => void) {
  const events = new EventEmitter();
  const contentsEvents = new EventEmitter();
  const contents = {
    send: note('send'),
    reload: note('reload'),
    setWindowOpenHandler: note('setWindowOpenHandler'),
    on: contentsEvents.on.bind(contentsEvents),
  } satisfies Members<electron.WebContents>;
  const state = { closed: false };
  const window = {
    webContents: contents,
    setTitle: note('setTitle'),
    setDocumentEdited: note('setDocumentEdited'),
    loadURL: async (address: string) => note('loadURL')(address),
    show: note('show'),
    focus: note('focus'),
    isMinimized: () => true,
    restore: note('restore'),
    on: events.on.bind(events),
    once: events.once.bind(events),
    close: () => {
      const event = cancellable();
      events.emit('close', event);
      if (!event.defaultPrevented) state.closed = true;
    },
  } satisfies Members<electron.BrowserWindow>;
  return { ...window, events, contentsEvents, state };
}

/** An event that notes whether it was stopped. */
export function cancellable() {
  const event = {
    defaultPrevented: false,
    preventDefault: () => void (event.defaultPrevented = true),
  };
  return event;
}
