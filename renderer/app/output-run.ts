import { create } from 'zustand';
import { sameData } from '../../core/collections/same-data.ts';
import { USUAL, type OutputChoice } from '../../core/files/output-choice.ts';
import type { Draft } from '../../core/project/draft.ts';
import { packContent } from '../../shared/file-content.ts';
import type { OutputRun, SinceRun } from '../output/run.ts';
import { useProgram } from '../store/use-program.ts';
import { send } from '../transport/send.ts';
import { designLine } from './design-line.ts';

const IDLE: OutputRun = { state: 'idle', done: 0, of: 0 };

interface OutputState {
  /** The one run of files; a second one begins when the first has ended. */
  readonly run: OutputRun;
  /** What is to be written the next time. */
  readonly choice: OutputChoice;
  /** What the run writes, or has written; null before it is known. */
  readonly begun: { readonly draft: Draft | null; readonly choice: OutputChoice } | null;
}

export const useOutputRun = create<OutputState>()(() => ({ run: IDLE, choice: USUAL, begun: null }));

export const setChoice = (choice: OutputChoice): void => useOutputRun.setState({ choice });

const setRun = (run: OutputRun): void => useOutputRun.setState({ run });

// Another document has other jigs, and nothing of it has been written.
useProgram.subscribe((state, before) => {
  if (state.designed !== null || before.designed === null) return;
  const { run, choice } = useOutputRun.getState();
  setChoice({ ...choice, jigs: 'all' });
  if (run.state !== 'running') setRun(IDLE);
});

/** What has happened to a draft and to the choice since the files were begun. */
export function sinceRun({ begun, choice }: OutputState, draft: Draft): SinceRun {
  if (begun === null) return 'nothing';
  if (begun.draft !== draft) return 'edited';
  return sameData(begun.choice, choice) ? 'nothing' : 'other choice';
}

let stopper: AbortController | null = null;

/** While the place is asked for there is no run yet, and there is to be one only. */
let isAsking = false;

/** Asks where, then writes the chosen files of the order there, whole or not at all. */
export async function startOutput(name: string): Promise<void> {
  const { run, choice } = useOutputRun.getState();
  if (run.state === 'running' || isAsking) return;
  isAsking = true;
  const begun = await send('output.begin', { suggestedName: `${name} jigs` }).finally(() => {
    isAsking = false;
  });
  if (!begun.ok) return setRun({ ...IDLE, state: 'failed', reason: begun.reason });
  if (begun.cancelled) return;
  const { job } = begun;
  stopper = new AbortController();
  useOutputRun.setState({ run: { ...IDLE, state: 'running' }, begun: null });
  const result = await designLine().exportAll(
    async ({ path, content }) => {
      const written = await send('output.write', { job, path, content: packContent(content) });
      if (!written.ok) throw new Error(written.reason);
      return written;
    },
    (done, of) => setRun({ state: 'running', done, of }),
    stopper.signal,
    { choice, onBegun: (draft) => useOutputRun.setState({ begun: { draft, choice } }) },
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
  const { files } = result;
  setRun({ state: 'done', done, of, files, place, ...(download === undefined ? {} : { download }) });
}

/** Stops the run; nothing of it stays. */
export const cancelOutput = (): void => stopper?.abort();

/** Shows the finished folder. */
export async function showOutput(): Promise<void> {
  const { place } = useOutputRun.getState().run;
  if (place !== undefined) await send('output.show', { place });
}
