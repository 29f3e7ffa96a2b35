import type { FromWorker, Port, ToWorker } from './messages.ts';

/** Starts the worker. */
export function spawnWorker(): Port<ToWorker, FromWorker> {
  const worker = new Worker(new URL('./design.worker.ts', import.meta.url), { type: 'module' });
  return {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker takes none
    post: (message) => worker.postMessage(message),
    listen: (receive) => worker.addEventListener('message', (event) => receive(event.data)),
  };
}
