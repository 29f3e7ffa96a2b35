type Lockable = Pick<Electron.WebContents, 'on' | 'setWindowOpenHandler'>;

/** Keeps a page where it is: no navigation, no redirect, no new window, no embedded page. */
export function lockContents(contents: Lockable): void {
  contents.on('will-navigate', (event) => event.preventDefault());
  contents.on('will-frame-navigate', (event) => event.preventDefault());
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
