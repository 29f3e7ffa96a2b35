/** Does one task at a time; of those that wait only the newest. */
export type NewestOnly = <T>(task: () => Promise<T>, done: (value: T) => void) => void;

/** A line in which a task that is not begun makes way for a newer one, so that typing never queues up work. */
export function newestOnly(): NewestOnly {
  let busy = false;
  let waiting: (() => Promise<void>) | null = null;
  const run = async (): Promise<void> => {
    busy = true;
    try {
      while (waiting !== null) {
        const next = waiting;
        waiting = null;
        await next();
      }
    } finally {
      busy = false;
    }
  };
  return (task, done) => {
    waiting = async () => {
      const value = await task();
      done(value);
    };
    if (!busy) void run();
  };
}
