import { create } from 'zustand';
import type { OutputRun } from '../output/run.ts';
import { send } from '../transport/send.ts';
import { designLine } from './design-line.ts';

const IDLE: OutputRun = { state: 'idle', done: 0, of: 0 };

/** The one run of cut files; a second one begins when the first has ended. */
export const useOutputRun = create<{ readonly run: OutputRun }>()(() => ({ run: IDLE }));

const setRun = (run: OutputRun): void => useOutputRun.setState({ run });

let stopper: AbortController | null = null;

/** Asks where, then writes all files of the order there, whole or not at all. */
export async function startOutput(name: string): Promise<void> {
  if (useOutputRun.getState().run.state === 'running') return;
  const begun = await send('output.begin', { suggestedName: `${name} jigs` });
  if (!begun.ok) return setRun({ ...IDLE, state: 'failed', reason: begun.reason });
  if (begun.cancelled) return;
  const { job } = begun;
  stopper = new AbortController();
  setRun({ ...IDLE, state: 'running' });
  const result = await designLine().exportAll(
    async ({ path, text }) => {
      const written = await send('output.write', { job, path, text });
      if (!written.ok) throw new Error(written.reason);
      return written;
    },
    (done, of) => setRun({ state: 'running', done, of }),
    stopper.signal,
  );
  stopper = null;
  const { done, of } = useOutputRun.getState().run;
  if (result.ended !== 'done') {
    await send('output.discard', { job });
    if (result.ended === 'stopped') return setRun({ state: 'cancelled', done, of });
    const reason =
      result.ended === 'failed' ? result.reason : result.findings.map(({ message }) => message).join(' ');
    return setRun({ state: 'failed', done, of, reason });
  }
  const finished = await send('output.finish', { job });
  if (!finished.ok) return setRun({ state: 'failed', done, of, reason: finished.reason });
  const { place, download } = finished;
  setRun({ state: 'done', done, of, place, ...(download === undefined ? {} : { download }) });
}

/** Stops the run; nothing of it stays. */
export const cancelOutput = (): void => stopper?.abort();

/** Shows the finished folder. */
export async function showOutput(): Promise<void> {
  const { place } = useOutputRun.getState().run;
  if (place !== undefined) await send('output.show', { place });
}
