import type * as electron from 'electron';

/** The parts of Electron that the program uses; handed in, so that everything but one line runs without it. */
export type Shell = Pick<
  typeof electron,
  'app' | 'BrowserWindow' | 'dialog' | 'ipcMain' | 'Menu' | 'protocol' | 'session' | 'shell'
>;
