import { ACTIONS, type ActionRecord } from '../../shared/contract/actions.ts';

export interface MenuParts {
  readonly platform: NodeJS.Platform;
  readonly packaged: boolean;
  /** Full paths, the latest first. */
  readonly recent: readonly { readonly name: string; readonly folder: string; readonly handle: string }[];
  readonly act: (id: string) => void;
  readonly open: (handle: string) => void;
}

type Item = Electron.MenuItemConstructorOptions;

/** A shortcut in the notation of menus: `Mod+ArrowUp` is `CmdOrCtrl+Up`. */
export const acceleratorOf = (shortcut: string): string =>
  shortcut.replace('Mod', 'CmdOrCtrl').replace('Arrow', '');

/** The menu bar, made of the shared action records; what each does is the page's own business. */
export function menuTemplate(parts: MenuParts): readonly Item[] {
  const mac = parts.platform === 'darwin';
  const items = (menu: ActionRecord['menu']): Item[] => actionItems(menu, parts.act);
  return [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    {
      label: 'File',
      submenu: [...withRecent(items('File'), parts), { type: 'separator' }, { role: mac ? 'close' : 'quit' }],
    },
    {
      label: 'Edit',
      submenu: [
        ...items('Edit'),
        { type: 'separator' },
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: 'View',
      submenu: [
        ...items('View'),
        { type: 'separator' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { role: 'resetZoom' },
        { role: 'togglefullscreen' },
        ...(parts.packaged ? [] : [{ role: 'toggleDevTools' } as const]),
      ],
    },
  ];
}

function actionItems(menu: ActionRecord['menu'], act: (id: string) => void): Item[] {
  const records: readonly ActionRecord[] = ACTIONS;
  return records
    .filter((record) => record.menu === menu)
    .flatMap(({ id, label, shortcut, group }): Item[] => [
      ...(group === true ? [{ type: 'separator' } as const] : []),
      {
        id,
        label,
        // Shown only: the page hears the keys itself, and would act twice.
        ...(shortcut === null
          ? {}
          : {
              accelerator: acceleratorOf(shortcut),
              registerAccelerator: false,
            }),
        click: () => act(id),
      },
    ]);
}

function withRecent(items: readonly Item[], { recent, open }: MenuParts): Item[] {
  const submenu: Item[] = recent.map(({ name, folder, handle }) => ({
    label: `${name} - ${folder}`,
    click: () => open(handle),
  }));
  const after = items.findIndex(({ id }) => id === 'file.open') + 1;
  const entry: Item = { id: 'recent', label: 'Open recent', enabled: recent.length > 0, submenu };
  return [...items.slice(0, after), entry, ...items.slice(after)];
}
