import type { FromWorker, Port, ToWorker } from './messages.ts';

let worker: Worker | null = null;

/** The page's one worker, started the first time; what is posted before it listens waits for it. */
export const startWorker = (): Worker =>
  (worker ??= new Worker(new URL('./design.worker.ts', import.meta.url), { type: 'module' }));

/** The line to the worker. */
export function spawnWorker(): Port<ToWorker, FromWorker> {
  const started = startWorker();
  return {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker takes none
    post: (message) => started.postMessage(message),
    listen: (receive) => started.addEventListener('message', (event) => receive(event.data)),
  };
}
