import { TAB_ID, type Tab } from '../../shared/contract/tab.ts';

const STORED = 'overhang-tab';
const BROWSER = 'overhang-browser';
const LOCK = 'overhang-tab ';

/** ms. A page that is loaded again may have to wait until its earlier self has let go of its id. */
const PATIENCE = 1000;

let own: Promise<Tab> | null = null;

/**
 * Who this tab is, for as long as it is open, also when it is loaded again. The id is locked, so that the copy
 * of a tab, which begins with the same id, takes another.
 */
export const ownTab = (): Promise<Tab> => (own ??= findTab().catch(newTab));

/** For where nothing may be stored: the tab is another one when it is loaded again. */
const newTab = (): Tab => ({ id: crypto.randomUUID(), browser: crypto.randomUUID() });

async function findTab(): Promise<Tab> {
  const stored = idIn(sessionStorage, STORED);
  const browser = idIn(localStorage, BROWSER) ?? crypto.randomUUID();
  localStorage.setItem(BROWSER, browser);
  const id = stored !== null && (await held(stored)) ? stored : crypto.randomUUID();
  if (id !== stored) await held(id);
  sessionStorage.setItem(STORED, id);
  return { id, browser };
}

function idIn(storage: Storage, key: string): string | null {
  const text = storage.getItem(key);
  return text !== null && TAB_ID.test(text) ? text : null;
}

/** Holds an id until the page is gone; false when another page of this browser holds it. */
const held = (id: string): Promise<boolean> =>
  new Promise((resolve) => {
    const forever = (): Promise<never> => {
      resolve(true);
      return new Promise(() => undefined);
    };
    navigator.locks
      .request(`${LOCK}${id}`, { signal: AbortSignal.timeout(PATIENCE) }, forever)
      .catch(() => resolve(false));
  });

/** The ids of all tabs of the program that are open in this browser. */
export async function openTabs(): Promise<string[]> {
  const { held: locks = [] } = await navigator.locks.query();
  return locks.flatMap(({ name = '' }) => (name.startsWith(LOCK) ? [name.slice(LOCK.length)] : []));
}
