import type { Channel } from '../../shared/contract/channels.ts';
import type { Reply, Request } from '../../shared/contract/messages.ts';
import { HOST_KEY } from '../../shared/contract/host-key.ts';
import { hostKey } from './host-key.ts';

export const NO_ANSWER = 'The browser host does not answer; start it again, this page stays as it is.';

const failure = (reason: string) => ({ ok: false, reason }) as const;

/** What the page is told when there is no answer; some messages know no failure. */
const FAILED: { readonly [C in Channel]: (reason: string) => Reply<C> } = {
  'document.open': failure,
  'document.save': failure,
  'document.recent': () => ({ ok: true, documents: [] }),
  'document.keep': failure,
  'document.kept': () => ({ ok: true, document: null }),
  'document.changed': () => ({ ok: true }),
  'output.begin': failure,
  'output.write': failure,
  'output.finish': failure,
  'output.discard': () => ({ ok: true }),
  'output.show': failure,
  'app.about': () => ({ ok: true, version: '', platform: 'browser' }),
};

/** Posts one message to the host that served the page. */
export async function askHost<C extends Channel>(channel: C, request: Request<C>): Promise<Reply<C>> {
  try {
    const response = await fetch(`/message/${channel}`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', [HOST_KEY]: hostKey() },
      body: JSON.stringify(request),
      cache: 'no-store',
    });
    // The host checks its replies against the contract before it sends them.
    if (!response.ok) return FAILED[channel]((await response.text()).trim());
    const reply: Reply<C> = await response.json();
    return reply;
  } catch {
    return FAILED[channel](NO_ANSWER);
  }
}
