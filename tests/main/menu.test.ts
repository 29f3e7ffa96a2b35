import { describe, expect, test } from 'vitest';
import { acceleratorOf, menuTemplate } from '../../electron/main/menu.ts';
import { ACTIONS, type ActionRecord } from '../../shared/contract/actions.ts';

type Item = Electron.MenuItemConstructorOptions;

const RECORDS: readonly ActionRecord[] = ACTIONS;

function menu(platform: NodeJS.Platform, packaged = true) {
  const calls: string[] = [];
  const template = menuTemplate({
    platform,
    packaged,
    recent: [{ name: 'a.overhang', folder: '/home', handle: 'h' }],
    act: (id) => calls.push(id),
    open: (handle) => calls.push(`open ${handle}`),
  });
  const inner = ({ submenu }: Item): readonly Item[] =>
    Array.isArray(submenu) ? submenu.flatMap((item) => [item, ...inner(item)]) : [];
  return { calls, template, items: template.flatMap(inner) };
}

const click = ({ click: run }: Item): unknown => Reflect.apply(run ?? (() => undefined), undefined, []);

describe('menuTemplate', () => {
  test.each(['linux', 'win32', 'darwin'] as const)(
    'holds every action once on %s, and tells its id',
    (platform) => {
      const { calls, items } = menu(platform);
      for (const { id } of RECORDS) {
        const found = items.filter((item) => item.id === id);
        expect(found).toHaveLength(1);
        for (const item of found) click(item);
      }
      expect(calls).toEqual(RECORDS.map(({ id }) => id));
    },
  );

  test('shows shortcuts without taking the keys from the page', () => {
    const { items } = menu('linux');
    for (const { id, shortcut } of RECORDS) {
      const item = items.find((other) => other.id === id);
      expect(item?.accelerator).toBe(shortcut === null ? undefined : acceleratorOf(shortcut));
      if (shortcut !== null) expect(item?.registerAccelerator).toBe(false);
    }
  });

  test('opens a recent document by its handle', () => {
    const { calls, items } = menu('linux');
    const recent = items.filter(({ label }) => label === 'a.overhang - /home');
    expect(recent).toHaveLength(1);
    for (const item of recent) click(item);
    expect(calls).toEqual(['open h']);
  });

  test('has developer tools in development only', () => {
    const has = (packaged: boolean) =>
      menu('linux', packaged).items.some(({ role }) => role === 'toggleDevTools');
    expect([has(true), has(false)]).toEqual([false, true]);
  });

  test('puts nothing of a browser in: no reload, no address, no service', () => {
    const roles = menu('linux').items.map(({ role }) => role);
    expect(roles).not.toContain('reload');
    expect(roles).not.toContain('forceReload');
  });
});

describe('ACTIONS', () => {
  test('no two have the same id or the same shortcut', () => {
    const ids = RECORDS.map(({ id }) => id);
    const shortcuts = RECORDS.flatMap(({ shortcut }) => shortcut ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(shortcuts).size).toBe(shortcuts.length);
  });

  test('every shortcut is one that menus can read', () => {
    const unread = RECORDS.flatMap(({ shortcut }) =>
      shortcut === null ? [] : [acceleratorOf(shortcut)],
    ).filter(
      (shortcut) =>
        !/^((CmdOrCtrl|Alt|Shift|CmdOrCtrl\+Shift)\+)?([A-Z0-9]|Enter|Delete|Up|Down|F8)$/.test(shortcut),
    );
    expect(unread).toEqual([]);
  });
});
