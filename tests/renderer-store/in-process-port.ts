import type { FromWorker, Port, ToWorker } from '../../renderer/worker/messages.ts';

interface Line {
  readonly client: Port<ToWorker, FromWorker>;
  readonly worker: Port<FromWorker, ToWorker>;
  /** Characters of all messages so far, each way, as JSON. */
  readonly sent: { toWorker: number[]; fromWorker: number[] };
}

/** A line between client and worker without a thread: messages are cloned and arrive later, in order. */
export function inProcessLine(): Line {
  const sent: Line['sent'] = { toWorker: [], fromWorker: [] };
  const ends = {
    client: [] as ((message: FromWorker) => void)[],
    worker: [] as ((message: ToWorker) => void)[],
  };
  const deliver = <M>(message: M, to: readonly ((message: M) => void)[], count: number[]): void => {
    const clone = structuredClone(message);
    count.push(JSON.stringify(message).length);
    setTimeout(() => {
      for (const receive of to) receive(clone);
    }, 0);
  };
  return {
    client: {
      post: (message) => deliver(message, ends.worker, sent.toWorker),
      listen: (receive) => ends.client.push(receive),
    },
    worker: {
      post: (message) => deliver(message, ends.client, sent.fromWorker),
      listen: (receive) => ends.worker.push(receive),
    },
    sent,
  };
}
