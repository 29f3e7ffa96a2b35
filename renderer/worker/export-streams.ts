import type { BundleFile, BundleWatch } from '../../core/bundle.ts';
import type { ListedFile } from '../../core/files/manifest.ts';
import type { OutputChoice } from '../../core/files/output-choice.ts';
import { hasErrors } from '../../core/findings/make.ts';
import type { DesignSession } from '../../core/session/design-session.ts';
import type { Output } from '../../core/session/session-output.ts';
import { loadPaperFonts } from '../../shared/load-paper-fonts.ts';
import type { FromWorker, Port, ToWorker, WrittenFile } from './messages.ts';

/** Hands over the files of exports, one at a time: the next when the one before has been written. */
export interface ExportStreams {
  /** Ends when the last file is handed over, or the export is refused, has failed or is stopped. */
  readonly begin: (call: number, choice: OutputChoice | undefined) => Promise<void>;
  /** A file of this export has been written. */
  readonly listed: (call: number, file: WrittenFile) => void;
  readonly stop: (call: number) => void;
}

/** A running export. */
interface Run {
  isStopped: boolean;
  /** Told that the file that was handed over is written; without it, that it is waited for no longer. */
  waits: (file: WrittenFile | undefined) => void;
}

const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve);
  });

export function exportStreams(
  port: Port<FromWorker, ToWorker>,
  session: Pick<DesignSession, 'whole'>,
  loadManifold: BundleWatch['manifold'],
): ExportStreams {
  const running = new Map<number, Run>();

  async function streamFiles(call: number, output: Output, run: Run): Promise<void> {
    const listed: ListedFile[] = [];
    /** Hands a file over and waits until it is written; undefined when the export has been stopped. */
    const written = ({ path, content }: BundleFile): Promise<WrittenFile | undefined> =>
      new Promise((resolve) => {
        run.waits = resolve;
        port.post({ kind: 'file', call, file: { path, content } });
      });
    const watch: BundleWatch = {
      stop: () => run.isStopped,
      paperFonts: loadPaperFonts,
      ...(loadManifold === undefined ? {} : { manifold: loadManifold }),
    };
    for await (const step of output.steps(watch)) {
      if (hasErrors(step.findings)) {
        port.post({ kind: 'refused', call, findings: step.findings });
        return;
      }
      for (const file of step.files) {
        const result = await written(file);
        if (run.isStopped || result === undefined) return;
        const { path, report } = file;
        listed.push({ path, ...result, ...(report === undefined ? {} : { report }) });
      }
      port.post({ kind: 'progress', call, done: step.done, of: step.of });
      // Without a file nothing was waited for, and a stop is heard only while something is.
      if (step.files.length === 0) await nextTask();
      if (run.isStopped) return;
    }
    await written({ path: 'manifest.json', content: output.manifest(listed) });
    if (!run.isStopped) port.post({ kind: 'exported', call, files: listed.length + 1 });
  }

  return {
    async begin(call, choice) {
      const run: Run = { isStopped: false, waits() {} };
      running.set(call, run);
      // The design as it is now, however long what writes it takes to load.
      const whole = session.whole();
      try {
        const { sessionOutput } = await import('../../core/session/session-output.ts');
        if (run.isStopped) return;
        const { value: output, findings } = sessionOutput(whole, choice);
        if (output === null) port.post({ kind: 'refused', call, findings });
        else await streamFiles(call, output, run);
      } catch (problem) {
        port.post({ kind: 'failed', revision: null, call, reason: String(problem) });
      } finally {
        running.delete(call);
      }
    },
    listed: (call, file) => running.get(call)?.waits(file),
    stop(call) {
      const run = running.get(call);
      if (run === undefined) return;
      run.isStopped = true;
      run.waits(undefined);
    },
  };
}
