import { describe, expect, test } from 'vitest';
import { documentArguments } from '../../electron/main/document-arguments.ts';
import { documentOffers } from '../../electron/main/offers.ts';
import { isFromOurPage } from '../../electron/main/sender.ts';
import { windowTitle } from '../../electron/main/window-title.ts';
import { createGrants } from '../../electron/messages/grants.ts';

describe('documentArguments', () => {
  test('picks documents, not the program, its folder or options', () => {
    const argv = [
      '/usr/bin/overhang.overhang',
      '.',
      '--port=a.csv',
      '-x.csv',
      'a.CSV',
      '/b/c.overhang',
      'd.pdf',
    ];
    expect(documentArguments(argv, '/home')).toEqual(['/home/a.CSV', '/b/c.overhang']);
  });

  test('reads the address of a file, and no other address', () => {
    const argv = [
      'overhang',
      'file:///home/K%C3%BCche%202.overhang',
      'file://elsewhere/a.csv',
      'file://%2.csv',
      'https://a/b.csv',
    ];
    expect(documentArguments(argv, '/home')).toEqual(['/home/Küche 2.overhang']);
  });
});

describe('windowTitle', () => {
  test.each([
    [{ name: 'Kitchen', unsaved: true }, 'Kitchen - not saved - Overhang'],
    [{ name: 'Kitchen', unsaved: false }, 'Kitchen - Overhang'],
    [{ name: '', unsaved: false }, 'Overhang'],
  ])('of %j is %s', (state, title) => {
    expect(windowTitle(state)).toBe(title);
  });
});

describe('isFromOurPage', () => {
  const contents = {};
  const frame = { parent: null, origin: 'app://bundle', url: 'app://bundle/index.html' };

  test('takes the top frame of our window with our page', () => {
    expect(isFromOurPage({ sender: contents, senderFrame: frame }, contents)).toBe(true);
  });

  test.each([
    ['no frame', contents, null],
    ['an inner frame', contents, { ...frame, parent: {} }],
    ['other contents', {}, frame],
    ['another origin', contents, { ...frame, origin: 'https://bundle' }],
    ['an origin that only begins like ours', contents, { ...frame, origin: 'app://bundle.other' }],
    ['a blank page that took our origin over', contents, { ...frame, url: 'about:blank' }],
    ['a file', contents, { ...frame, origin: 'file://', url: 'file:///index.html' }],
  ])('refuses %s', (_, sender, senderFrame) => {
    expect(isFromOurPage({ sender, senderFrame }, contents)).toBe(false);
  });
});

describe('documentOffers', () => {
  test('waits until the page listens, then tells at once; a page loaded again takes over', () => {
    const grants = createGrants();
    const offers = documentOffers(grants);
    const told: string[] = [];
    const hear = (who: string) => (handle: string) => void told.push(`${who} ${grants.pathOf(handle)}`);
    offers.offer('/a.csv');
    offers.offer('/not-ours.exe');
    offers.listen(hear('first'));
    offers.offer('/b.overhang');
    offers.listen(hear('second'));
    offers.offer('/c.json');
    expect(told).toEqual(['first /a.csv', 'first /b.overhang', 'second /c.json']);
  });
});

describe('grants', () => {
  test('a path keeps its handle, and a handle says nothing about the path', () => {
    const { grant, pathOf } = createGrants();
    const handle = grant('/home/a.csv');
    expect(grant('/home/../home/a.csv')).toBe(handle);
    expect(handle).toMatch(/^[0-9a-f-]{36}$/);
    expect([pathOf(handle), pathOf('/home/a.csv'), pathOf('')]).toEqual([
      '/home/a.csv',
      undefined,
      undefined,
    ]);
    expect(createGrants().grant('/home/a.csv')).not.toBe(handle);
  });
});
