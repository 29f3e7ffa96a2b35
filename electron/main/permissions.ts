/** The page may write what it copied to the clipboard, and nothing else. */
const ALLOWED: ReadonlySet<string> = new Set(['clipboard-sanitized-write']);

type Handled = Pick<
  Electron.Session,
  'setPermissionRequestHandler' | 'setPermissionCheckHandler' | 'setDevicePermissionHandler' | 'on'
>;

/** Denies what Electron would grant by default: everything but what is listed, every device, every download. */
export function restrictPermissions(session: Handled): void {
  session.setPermissionRequestHandler((_contents, permission, callback) => callback(ALLOWED.has(permission)));
  session.setPermissionCheckHandler((_contents, permission) => ALLOWED.has(permission));
  session.setDevicePermissionHandler(() => false);
  session.on('will-download', (event) => event.preventDefault());
}
