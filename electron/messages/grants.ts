import { randomUUID } from 'node:crypto';
import { resolve } from 'node:path';

/**
 * The files that the user or the system put into the program's hands. The page knows them by handles only,
 * so it cannot name a file that nobody gave it.
 */
export interface Grants {
  /** The same path keeps its handle as long as the program runs. */
  readonly grant: (path: string) => string;
  readonly pathOf: (handle: string) => string | undefined;
}

export function createGrants(): Grants {
  const handles = new Map<string, string>();
  const paths = new Map<string, string>();
  return {
    grant(path) {
      const place = resolve(path);
      const known = handles.get(place);
      if (known !== undefined) return known;
      const handle = randomUUID();
      handles.set(place, handle);
      paths.set(handle, place);
      return handle;
    },
    pathOf: (handle) => paths.get(handle),
  };
}
