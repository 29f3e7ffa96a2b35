/** Something that does one task at a time. */
export interface Lane<Task, Result> {
  readonly do: (task: Task) => Promise<Result>;
  readonly close: () => Promise<void>;
}

interface Lanes<Task, Result> {
  readonly tasks: AsyncIterable<Task>;
  readonly count: number;
  readonly open: () => Lane<Task, Result>;
  /** Called as tasks end, in no fixed order, with their place in the list. */
  readonly done: (result: Result, index: number) => void;
  /** What a task comes to whose lane broke down; the next task gets a new lane. */
  readonly broken: (task: Task, problem: unknown) => Result;
}

/** Does tasks on so many lanes at once; no task is asked for before a lane is free for it. */
export async function inLanes<Task, Result>(of: Lanes<Task, Result>): Promise<void> {
  const { count, open, done, broken } = of;
  const tasks = of.tasks[Symbol.asyncIterator]();
  let next = 0;
  // An async generator answers calls of `next` in their turn.
  const take = () => {
    const task = tasks.next();
    return task.then(({ done: end, value }) => (end === true ? null : { value, index: next++ }));
  };
  const run = async (): Promise<void> => {
    let lane: Lane<Task, Result> | null = null;
    try {
      for (let task = await take(); task !== null; task = await take()) {
        lane ??= open();
        const { value, index } = task;
        const opened = lane;
        const result = await opened.do(value).catch(async (problem: unknown) => {
          lane = null;
          await opened.close();
          return broken(value, problem);
        });
        done(result, index);
      }
    } finally {
      await lane?.close();
    }
  };
  await Promise.all(Array.from({ length: count }, run));
}
