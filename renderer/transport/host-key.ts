const STORED = 'overhang-key';
let known = '';

/**
 * The key that the host asks for with each message; empty when the page was opened without it. It comes behind
 * the `#` of the printed address, is taken out of the address bar, and is kept for other tabs of the same host.
 */
export function hostKey(): string {
  const [, given] = /^#key=([0-9a-f]{64})$/.exec(location.hash) ?? [];
  if (given !== undefined) {
    known = given;
    history.replaceState(null, '', location.pathname);
  }
  try {
    if (given !== undefined) localStorage.setItem(STORED, given);
    return localStorage.getItem(STORED) ?? known;
  } catch {
    // Nothing may be stored: this tab alone has it.
    return known;
  }
}
