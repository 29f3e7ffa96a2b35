import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, test, vi } from 'vitest';
import { startProgram } from '../../electron/main/program.ts';
import { NOTICES } from '../../shared/contract/bridge.ts';
import { CHANNELS } from '../../shared/contract/channels.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { TAB } from '../messages/tabs.ts';
import { makePage } from './fakes/page.ts';
import { cancellable, fakeShell } from './fakes/shell.ts';

const root = temporaryFolder();
let next = 0;

/** The program on a fake Electron, with a data folder of its own. */
async function started(options: { readonly data?: string; readonly first?: boolean } = {}) {
  const data = options.data ?? join(root, String((next += 1)));
  mkdirSync(data, { recursive: true });
  const fake = fakeShell({ data, first: options.first ?? true });
  await startProgram(fake.shell, { page: makePage(data), preload: '/built/preload.cjs' });
  return { ...fake, data };
}

const settled = () => wait(20);

describe('start', () => {
  test('does before Electron is ready what must be done before, in order', async () => {
    const { calls } = await started();
    const names = calls.map(([name]) => name);
    expect(names.slice(0, 5)).toEqual([
      'enableSandbox',
      'registerSchemesAsPrivileged',
      'setAppUserModelId',
      'requestSingleInstanceLock',
      'whenReady',
    ]);
    expect(names.at(-1)).toBe('loadURL');
  });

  test('loads the built page through its own scheme, and shows the window when it is painted', async () => {
    const { named, schemes, window } = await started();
    expect(named('loadURL')).toEqual([['app://bundle/index.html']]);
    const response = await schemes.get('app')?.(new Request('app://bundle/index.html'));
    expect(await response?.text()).toContain('<title>Page</title>');
    expect(named('show')).toEqual([]);
    window().events.emit('ready-to-show');
    expect(named('show')).toHaveLength(1);
  });

  test('a second start opens no window and ends', async () => {
    const { named, windows } = await started({ first: false });
    expect(windows).toEqual([]);
    expect(named('quit')).toHaveLength(1);
    expect(named('whenReady')).toEqual([]);
  });

  test('a second start hands its document to the first, which comes to the front', async () => {
    const { appEvents, data, named, send, tell } = await started();
    tell(NOTICES.listening);
    writeFileSync(join(data, 'a.csv'), 'cabinet');
    appEvents.emit('second-instance', {}, ['overhang', 'a.csv'], data);
    const [[notice, handle] = []] = named('send');
    expect(notice).toBe(NOTICES.offered);
    expect(await send('document.open', { source: handle })).toMatchObject({ ok: true, name: 'a.csv' });
    expect([named('restore').length, named('focus').length]).toEqual([1, 1]);
  });

  test('a document that the system opens waits until the page listens', async () => {
    const { appEvents, data, named, tell } = await started();
    const event = cancellable();
    appEvents.emit('open-file', event, join(data, 'a.overhang'));
    expect(event.defaultPrevented).toBe(true);
    expect(named('send')).toEqual([]);
    tell(NOTICES.listening);
    expect(named('send')).toHaveLength(1);
  });
});

describe('messages', () => {
  test('every channel of the contract is answered, and only those and the drop', async () => {
    const { channels } = await started();
    expect(channels().toSorted()).toEqual([...CHANNELS, NOTICES.dropped].toSorted());
  });

  test.each([...CHANNELS, NOTICES.dropped])('%s from anyone but our page is refused', async (channel) => {
    const { fromPage, send } = await started();
    const { sender, senderFrame } = fromPage();
    const strangers = [
      { sender, senderFrame: null },
      { sender, senderFrame: { ...senderFrame, parent: {} } },
      { sender, senderFrame: { ...senderFrame, origin: 'https://example.invalid' } },
      { sender: {}, senderFrame },
    ];
    for (const stranger of strangers) {
      expect(await send(channel, {}, stranger)).toEqual({
        ok: false,
        reason: 'the sender is not the page of this program',
      });
    }
  });

  test('listening from anyone but our page gets no document', async () => {
    const { appEvents, named, tell } = await started();
    appEvents.emit('open-file', cancellable(), '/a.csv');
    tell(NOTICES.listening, { sender: {}, senderFrame: null });
    expect(named('send')).toEqual([]);
  });

  test('a dropped file is opened by its path, if it is a document', async () => {
    const { data, send } = await started();
    writeFileSync(join(data, 'a.csv'), 'cabinet');
    writeFileSync(join(data, 'id_rsa'), 'secret');
    expect(await send(NOTICES.dropped, join(data, 'a.csv'))).toMatchObject({ ok: true, text: 'cabinet' });
    for (const path of [join(data, 'id_rsa'), 'a.csv', '', 7, null]) {
      expect(await send(NOTICES.dropped, path)).toMatchObject({ ok: false });
    }
  });

  test('the page can read and write no path that it names itself', async () => {
    const { data, send } = await started();
    const path = join(data, 'a.overhang');
    writeFileSync(path, '{}');
    expect(await send('document.open', { source: path })).toMatchObject({ ok: false });
    expect(
      await send('document.save', { tab: TAB, handle: path, suggestedName: 'a.overhang', text: 'x' }),
    ).toMatchObject({ ok: false });
    expect(readFileSync(path, 'utf8')).toBe('{}');
  });

  test('open, save and cut files go through the dialogs of the system', async () => {
    const { answers, data, named, send } = await started();
    writeFileSync(join(data, 'a.csv'), 'cabinet');
    answers.open.push(join(data, 'a.csv'), data);
    answers.save.push(join(data, 'a.overhang'));
    expect(await send('document.open', { source: null })).toMatchObject({ ok: true, text: 'cabinet' });
    expect(
      await send('document.save', { tab: TAB, handle: null, suggestedName: 'a.overhang', text: '{}' }),
    ).toMatchObject({ ok: true, name: 'a.overhang' });
    expect(readFileSync(join(data, 'a.overhang'), 'utf8')).toBe('{}');
    const begun = await send('output.begin', { suggestedName: 'jigs' });
    const job = typeof begun === 'object' && begun !== null && 'job' in begun ? begun.job : '';
    await send('output.write', { job, path: 'manifest.json', content: '{}' });
    const place = join(data, 'jigs');
    expect(await send('output.finish', { job })).toEqual({ ok: true, place });
    await send('output.show', { place });
    expect(named('showItemInFolder')).toEqual([[join(place, 'manifest.json')]]);
    expect(named('addRecentDocument')).toEqual([[join(data, 'a.csv')], [join(data, 'a.overhang')]]);
  });

  test('the recent documents of one run are in the menu of the next, and can be opened there', async () => {
    const first = await started();
    writeFileSync(join(first.data, 'a.csv'), 'cabinet');
    first.answers.open.push(join(first.data, 'a.csv'));
    await first.send('document.open', { source: null });
    const second = await started({ data: first.data });
    expect(JSON.stringify(second.named('setApplicationMenu').at(-1))).toContain(`a.csv - ${first.data}`);
    const recent = await second.send('document.recent', {});
    expect(recent).toMatchObject({ ok: true, documents: [{ name: 'a.csv', folder: first.data }] });
  });
});

describe('the window', () => {
  const UNSAVED = { tab: TAB, unsaved: true, name: 'Kitchen' };

  test('has the document in its title, whatever the page calls itself', async () => {
    const { named, send, window } = await started();
    await send('document.changed', UNSAVED);
    expect(named('setTitle').at(-1)).toEqual(['Kitchen - not saved - Overhang']);
    expect(named('setDocumentEdited').at(-1)).toEqual([true]);
    const event = cancellable();
    window().events.emit('page-title-updated', event);
    expect(event.defaultPrevented).toBe(true);
  });

  test('closes when nothing is unsaved', async () => {
    const { window, named } = await started();
    window().close();
    expect(window().state.closed).toBe(true);
    expect(named('showMessageBox')).toEqual([]);
  });

  test('asks with unsaved work; escape keeps it open', async () => {
    const { answers, named, send, window } = await started();
    await send('document.changed', UNSAVED);
    answers.box.push(2);
    window().close();
    await settled();
    expect(window().state.closed).toBe(false);
    expect(named('showMessageBox')[0]?.[1]).toMatchObject({
      message: 'Save the changes to Kitchen?',
      buttons: ['Save', 'Discard', 'Keep open'],
      defaultId: 0,
      cancelId: 2,
    });
  });

  test('save: the page is told to, and the window closes when it has', async () => {
    const { answers, data, named, send, window } = await started();
    await send('document.changed', UNSAVED);
    answers.box.push(0);
    answers.save.push(join(data, 'k.overhang'));
    window().close();
    await settled();
    expect(named('send')).toEqual([[NOTICES.action, 'file.save']]);
    await send('document.save', { tab: TAB, handle: null, suggestedName: 'k.overhang', text: '{}' });
    expect(window().state.closed).toBe(false);
    await send('document.changed', { ...UNSAVED, unsaved: false });
    expect(window().state.closed).toBe(true);
  });

  test('save that is cancelled or fails: the window stays, and a later save does not close it', async () => {
    for (const answer of [null, '/no/such/folder/k.overhang']) {
      const { answers, send, window } = await started();
      await send('document.changed', UNSAVED);
      answers.box.push(0);
      answers.save.push(answer);
      window().close();
      await settled();
      await send('document.save', { tab: TAB, handle: null, suggestedName: 'k.overhang', text: '{}' });
      await send('document.changed', { ...UNSAVED, unsaved: false });
      expect(window().state.closed).toBe(false);
    }
  });

  test('discard: closes, and what was kept for a crash goes too', async () => {
    const { answers, appEvents, data, named, send, window } = await started();
    await send('document.changed', UNSAVED);
    await send('document.keep', { tab: TAB, name: 'Kitchen', handle: null, text: '{}' });
    expect(readdirSync(join(data, 'recovery'))).toEqual([`unsaved-${TAB.id}.json`]);
    answers.box.push(1);
    window().close();
    await settled();
    expect(window().state.closed).toBe(true);
    appEvents.emit('window-all-closed');
    const event = cancellable();
    appEvents.emit('will-quit', event);
    expect(event.defaultPrevented).toBe(true);
    await vi.waitFor(() => expect(named('quit')).toHaveLength(2));
    expect(readdirSync(join(data, 'recovery'))).toEqual([]);
    const last = cancellable();
    appEvents.emit('will-quit', last);
    expect(last.defaultPrevented).toBe(false);
  });

  test('quitting leaves no unfinished folder of cut files', async () => {
    const { answers, appEvents, data, named, send } = await started();
    const place = join(data, 'out');
    mkdirSync(place);
    answers.open.push(place);
    await send('output.begin', { suggestedName: 'jigs' });
    expect(readdirSync(place)).toHaveLength(1);
    appEvents.emit('will-quit', cancellable());
    await vi.waitFor(() => expect(named('quit')).toHaveLength(1));
    expect(readdirSync(place)).toEqual([]);
  });

  test('a page that crashed is loaded again and finds its work', async () => {
    const { data, named, send, window } = await started();
    await send('document.kept', { tab: TAB, open: [TAB.id] });
    await send('document.keep', { tab: TAB, name: 'Kitchen', handle: null, text: '{"a":1}' });
    window().contentsEvents.emit('render-process-gone', {}, { reason: 'crashed' });
    expect(named('reload')).toHaveLength(1);
    window().contentsEvents.emit('render-process-gone', {}, { reason: 'clean-exit' });
    expect(named('reload')).toHaveLength(1);
    expect(await send('document.kept', { tab: TAB, open: [TAB.id] })).toMatchObject({
      document: { name: 'Kitchen', text: '{"a":1}' },
    });
    expect(existsSync(join(data, 'recovery'))).toBe(true);
  });
});
