import type { ToWorker } from './messages.ts';

/**
 * The worker: everything that an order comes to is worked out here, so that typing never waits. It begins with this
 * and fetches the rest by itself: to start it needs the page, which is busy soon.
 */
const early: ToWorker[] = [];
let receive = (message: ToWorker): void => {
  early.push(message);
};
addEventListener('message', (event) => receive(event.data));
// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has none
postMessage({ kind: 'begun' });

const { serveWorker } = await import('./serve-worker.ts');
serveWorker({
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has none
  post: (message) => postMessage(message),
  listen(answer) {
    receive = answer;
    for (const message of early) answer(message);
  },
});
