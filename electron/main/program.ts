import { join } from 'node:path';
import packageJson from '../../package.json';
import { NOTICES } from '../../shared/contract/bridge.ts';
import { diskDocuments } from '../messages/disk-documents.ts';
import { diskOutput } from '../messages/disk-output.ts';
import { diskRecovery } from '../messages/disk-recovery.ts';
import { createGrants } from '../messages/grants.ts';
import { recentPaths } from '../messages/recent.ts';
import { createRouter } from '../messages/router.ts';
import { answerScheme } from './answer-scheme.ts';
import { closeGuard } from './close-guard.ts';
import { desktopDialogs } from './desktop-dialogs.ts';
import { documentArguments } from './document-arguments.ts';
import { lockContents } from './lock-contents.ts';
import { menuTemplate } from './menu.ts';
import { documentOffers } from './offers.ts';
import { restrictPermissions } from './permissions.ts';
import { registerMessages } from './register-messages.ts';
import { SCHEME, SCHEMES, START_PAGE } from './scheme.ts';
import type { Shell } from './shell.ts';
import { watchSaving } from './watch-saving.ts';
import { windowOptions } from './window-options.ts';
import { windowTitle } from './window-title.ts';

/** Where the built files are. */
export interface Places {
  readonly page: string;
  readonly preload: string;
}

/** Starts the desktop program; a second start only hands its documents to the first. */
export async function startProgram(shell: Shell, places: Places): Promise<void> {
  const { app } = shell;
  app.enableSandbox();
  shell.protocol.registerSchemesAsPrivileged(SCHEMES);
  app.setAppUserModelId('overhang.desktop');
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  const grants = createGrants();
  const offers = documentOffers(grants);
  for (const path of documentArguments(process.argv, process.cwd())) offers.offer(path);
  app.on('web-contents-created', (_event, contents) => lockContents(contents));
  app.on('window-all-closed', () => app.quit());
  app.on('open-file', (event, path) => {
    event.preventDefault();
    offers.offer(path);
  });
  await app.whenReady();

  restrictPermissions(shell.session.defaultSession);
  shell.protocol.handle(SCHEME, (request) => answerScheme(places.page, request));
  const window = new shell.BrowserWindow(windowOptions(places.preload, app.isPackaged));
  const { webContents } = window;
  const tell = (notice: string) => (word: string) => webContents.send(notice, word);
  const act = tell(NOTICES.action);
  const open = tell(NOTICES.offered);

  const dialogs = desktopDialogs(shell.dialog, () => window);
  const guard = closeGuard({
    ask: dialogs.askToClose,
    save: () => act('file.save'),
    close: () => window.close(),
  });
  const data = app.getPath('userData');
  const recent = recentPaths(join(data, 'recent.json'));
  const hashes = new Map<string, string>();
  const documents = diskDocuments({
    dialogs,
    grants,
    recent,
    hashes,
    changed(state) {
      window.setTitle(windowTitle(state));
      window.setDocumentEdited(state.unsaved);
      guard.changed(state);
    },
    used(path) {
      app.addRecentDocument(path);
      void showMenu();
    },
  });
  const showMenu = async (): Promise<void> => {
    const { platform } = process;
    const parts = { platform, packaged: app.isPackaged, recent: await documents.recent(), act, open };
    shell.Menu.setApplicationMenu(shell.Menu.buildFromTemplate([...menuTemplate(parts)]));
  };
  const recovery = diskRecovery({ folder: join(data, 'recovery'), grants, hashes });
  const router = createRouter({
    documents: watchSaving(documents, guard.notSaved),
    recovery,
    output: diskOutput(dialogs, (path) => shell.shell.showItemInFolder(path)),
    about: { version: packageJson.version, platform: 'desktop' },
  });
  registerMessages(shell.ipcMain, {
    router,
    grants,
    contents: () => webContents,
    listening: () => offers.listen(open),
  });

  window.on('close', (event) => {
    if (!guard.mayClose()) event.preventDefault();
  });
  window.on('page-title-updated', (event) => event.preventDefault());
  window.once('ready-to-show', () => window.show());
  // The page asks for its unsaved work when it is loaded again.
  webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') webContents.reload();
  });
  app.on('second-instance', (_event, argv, folder) => {
    for (const path of documentArguments(argv, folder)) offers.offer(path);
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  let tidied = false;
  app.on('will-quit', (event) => {
    if (tidied) return;
    event.preventDefault();
    tidied = true;
    void Promise.allSettled([router.close(), recovery.settleAll()]).then(() => app.quit());
  });
  await showMenu();
  await window.loadURL(START_PAGE);
}
