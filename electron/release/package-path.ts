/**
 * The folder of the package that a module or file of a build is from, from the project's root:
 * `node_modules/fontkit/node_modules/clone`. Null for our own.
 */
export function packagePath(moduleId: string): string | null {
  const injected = INJECTED.find(([mark]) => moduleId.startsWith(mark));
  if (injected !== undefined) return injected[1];
  const path = moduleId.replaceAll('\\', '/');
  return /(?<=^|\/)node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path)?.[0] ?? null;
}

/** What the bundler adds of its own. */
const INJECTED: readonly (readonly [mark: string, path: string])[] = [
  ['\0rolldown/', 'node_modules/rolldown'],
  ['\0vite/', 'node_modules/vite'],
  ['__vite-browser-external', 'node_modules/vite'],
];
