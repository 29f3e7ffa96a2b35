import type { OutputRun, SinceRun } from './run.ts';

interface RunPanelProps {
  readonly run: OutputRun;
  readonly since: SinceRun;
  /** Why nothing can be written now; null when it can. */
  readonly reason: string | null;
  readonly onStart: () => void;
  readonly onCancel: () => void;
  readonly onShow: () => void;
}

/** Starts the writing, shows how far it is, and what came of it. */
export function RunPanel({ run, since, reason, onStart, onCancel, onShow }: RunPanelProps) {
  const { state, done, of } = run;
  const isRunning = state === 'running';
  return (
    <section className="document-changes" aria-label="Write the files" tabIndex={0}>
      <h3>Write the files</h3>
      <div className="document-acts">
        <button
          type="button"
          className="app-main-button"
          disabled={isRunning || reason !== null}
          onClick={onStart}
        >
          {state === 'idle' ? 'Write the files …' : 'Write the files again …'}
        </button>
        <button type="button" disabled={!isRunning} onClick={onCancel}>
          Cancel
        </button>
      </div>
      {reason === null ? null : <p>{reason}</p>}
      {isRunning ? (
        <label className="output-progress">
          Part {done} of {of}
          <progress value={done} max={Math.max(of, 1)} />
        </label>
      ) : null}
      <div role="status">
        <Result run={run} since={since} onShow={onShow} />
      </div>
    </section>
  );
}

const SUMMARIES: Readonly<Record<SinceRun, string>> = {
  nothing: '✓ Written:',
  edited: '! Written before the last change:',
  'other choice': '! Written with another choice:',
};

const OUTDATED: Readonly<Record<Exclude<SinceRun, 'nothing'>, string>> = {
  edited:
    'What was written is from before the change. Cut nothing from it that has changed: write the files again.',
  'other choice':
    'What was written is another choice of files than is made now. Write the files again to have this one.',
};

interface ResultProps {
  readonly run: OutputRun;
  readonly since: SinceRun;
  readonly onShow: () => void;
}

function Result({ run, since, onShow }: ResultProps) {
  const { state, of, files, place, download, reason } = run;
  switch (state) {
    case 'idle':
      return <p>Each file is read back and checked before the folder is put in its place.</p>;
    case 'running':
      return null;
    case 'cancelled':
      return <p className="document-summary">Cancelled. Nothing was left behind.</p>;
    case 'failed':
      return (
        <>
          <p className="document-summary output-failed">✕ Nothing was written</p>
          <p>{reason ?? 'The reason is not known.'}</p>
        </>
      );
    default:
      return (
        <>
          <p className={`document-summary${since === 'nothing' ? '' : ' output-outdated'}`}>
            {SUMMARIES[since]} {files === undefined ? `${of} parts` : `${files} files of ${of} parts`}
          </p>
          {since === 'nothing' ? null : <p>{OUTDATED[since]}</p>}
          {place === undefined ? null : <p className="output-place">{place}</p>}
          {download === undefined ? (
            <button type="button" onClick={onShow}>
              Show the folder
            </button>
          ) : (
            <a className="output-download" href={download} download>
              Download the folder
            </a>
          )}
        </>
      );
  }
}
