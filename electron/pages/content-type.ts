/** What the built page consists of; a file of any other kind is not served. */
const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  json: 'application/json; charset=utf-8',
  wasm: 'application/wasm',
  woff2: 'font/woff2',
};

/** The media type of a file by its name, or undefined if its kind is not served: `index.html` is `text/html`. */
export const contentType = (name: string): string | undefined => {
  const extension = /[^/]\.([a-z0-9]+)$/.exec(name)?.[1] ?? '';
  return Object.hasOwn(TYPES, extension) ? TYPES[extension] : undefined;
};
