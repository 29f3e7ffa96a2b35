import type { FromWorker, Port, ToWorker } from './messages.ts';

let worker: Worker | null = null;

/** The page's one worker, started the first time; what is posted before it listens waits for it. */
const startWorker = (): Worker =>
  (worker ??= new Worker(new URL('./design.worker.ts', import.meta.url), { type: 'module' }));

/** ms. A worker that has not begun by then begins while the page is being built. */
const PATIENCE = 200;

/** Ends when the worker runs by itself. To start it needs a page that is not busy. */
export const workerBegun = (): Promise<void> =>
  new Promise((resolve) => {
    startWorker().addEventListener('message', () => resolve(), { once: true });
    setTimeout(resolve, PATIENCE);
  });

/** The line to the worker. */
export function spawnWorker(): Port<ToWorker, FromWorker> {
  const started = startWorker();
  return {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker takes none
    post: (message) => started.postMessage(message),
    listen: (receive) => started.addEventListener('message', (event) => receive(event.data)),
  };
}
