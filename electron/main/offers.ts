import { isDocumentName } from '../../shared/document-kinds.ts';
import type { Grants } from '../messages/grants.ts';

/** Documents that the system asks to open; they wait until the page listens. */
export interface Offers {
  readonly offer: (path: string) => void;
  /** From now on handles are told at once; a page that was loaded again takes the place of the old one. */
  readonly listen: (tell: (handle: string) => void) => void;
}

export function documentOffers(grants: Grants): Offers {
  let tell: ((handle: string) => void) | null = null;
  let waiting: readonly string[] = [];
  return {
    offer(path) {
      if (!isDocumentName(path)) return;
      const handle = grants.grant(path);
      if (tell === null) waiting = [...waiting, handle];
      else tell(handle);
    },
    listen(listener) {
      tell = listener;
      for (const handle of waiting) listener(handle);
      waiting = [];
    },
  };
}
