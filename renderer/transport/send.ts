import type { Send } from '../../shared/contract/messages.ts';
import { bridge } from './bridge.ts';
import { sendToHost } from './send-to-host.ts';

/**
 * Sends a message of the contract to the platform: the desktop shell, or the host that served the page.
 * In a browser `document.open` chooses and uploads a file first, and what is saved comes as a download.
 *
 * @example await send('app.about', {}) // { ok: true, version: '0.1.0', platform: 'browser' }
 */
export const send: Send = (channel, request) => (bridge()?.send ?? sendToHost)(channel, request);
