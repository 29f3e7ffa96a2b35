/** The window: everything that gives a page more than a page needs is off, said out loud even where it is the default. */
export const windowOptions = (
  preload: string,
  packaged: boolean,
): Electron.BrowserWindowConstructorOptions => ({
  width: 1440,
  height: 900,
  minWidth: 720,
  minHeight: 520,
  show: false,
  title: 'Overhang',
  webPreferences: {
    preload,
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
    plugins: false,
    // Drawer names and notes are no prose, and dictionaries would be downloaded.
    spellcheck: false,
    devTools: !packaged,
  },
});
