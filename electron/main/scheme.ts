/** The page's own scheme and host: `app://bundle/index.html`. A scheme of its own has none of the rights of `file:`. */
export const SCHEME = 'app';
export const ORIGIN = `${SCHEME}://bundle`;
export const START_PAGE = `${ORIGIN}/index.html`;

/** Standard, so that it has an origin; secure, so that workers and the clipboard can be used. */
export const SCHEMES = [
  { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
] satisfies Electron.CustomScheme[];
