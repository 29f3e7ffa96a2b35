import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session, shell } from 'electron';
import { join } from 'node:path';
import { startProgram } from './program.ts';

const built = join(import.meta.dirname, '..');

// Not awaited: Electron is ready only after this module has run to its end.
startProgram(
  { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session, shell },
  { page: join(built, 'renderer'), preload: join(built, 'preload/preload.cjs') },
).catch((problem: unknown) => {
  dialog.showErrorBox('Overhang cannot start', problem instanceof Error ? problem.message : String(problem));
  app.exit(1);
});
