import { extensionOf, ORDER_EXTENSIONS, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';
import type { Dialogs } from '../messages/disk-documents.ts';
import type { CloseChoice } from './close-guard.ts';
import type { Shell } from './shell.ts';

const PROJECTS = { name: 'Overhang project', extensions: [...PROJECT_EXTENSIONS] };
const ORDERS = { name: 'Order table (CSV)', extensions: [...ORDER_EXTENSIONS] };
const ALL = { name: 'Projects and orders', extensions: [...PROJECT_EXTENSIONS, ...ORDER_EXTENSIONS] };

export interface DesktopDialogs extends Dialogs {
  readonly askToClose: (name: string) => Promise<CloseChoice>;
}

/** The system's own dialogs, tied to the window. */
export function desktopDialogs(
  dialog: Shell['dialog'],
  window: () => Electron.BrowserWindow,
): DesktopDialogs {
  const openOne = async (options: Electron.OpenDialogOptions): Promise<string | null> => {
    const { canceled, filePaths } = await dialog.showOpenDialog(window(), options);
    return canceled ? null : (filePaths[0] ?? null);
  };
  return {
    openDocument: () => openOne({ properties: ['openFile'], filters: [ALL, PROJECTS, ORDERS] }),
    async saveDocument(suggestedName) {
      const table = (ORDER_EXTENSIONS as readonly string[]).includes(extensionOf(suggestedName));
      const { canceled, filePath } = await dialog.showSaveDialog(window(), {
        defaultPath: suggestedName,
        filters: [table ? ORDERS : PROJECTS],
        properties: ['createDirectory', 'showOverwriteConfirmation'],
      });
      return canceled || filePath === '' ? null : filePath;
    },
    outputFolder: () =>
      openOne({
        title: 'Where should the folder of cut files go?',
        buttonLabel: 'Write here',
        properties: ['openDirectory', 'createDirectory'],
      }),
    async askToClose(name) {
      const { response } = await dialog.showMessageBox(window(), {
        type: 'warning',
        message: `Save the changes to ${name === '' ? 'the order' : name}?`,
        detail: 'Without saving they are lost.',
        buttons: CLOSE_BUTTONS.map(({ label }) => label),
        defaultId: 0,
        cancelId: CLOSE_BUTTONS.findIndex(({ choice }) => choice === 'stay'),
        noLink: true,
      });
      return CLOSE_BUTTONS[response]?.choice ?? 'stay';
    },
  };
}

const CLOSE_BUTTONS: readonly { readonly label: string; readonly choice: CloseChoice }[] = [
  { label: 'Save', choice: 'save' },
  { label: 'Discard', choice: 'discard' },
  { label: 'Keep open', choice: 'stay' },
];
