import type { BundleFile, BundleWatch } from '../../core/bundle.ts';
import type { ListedFile } from '../../core/files/manifest.ts';
import type { OutputChoice } from '../../core/files/output-choice.ts';
import { hasErrors } from '../../core/findings/make.ts';
import type { DesignSession, Output } from '../../core/session/design-session.ts';
import { loadPaperFonts } from '../../shared/fonts.ts';
import type { FromWorker, Port, ToWorker, WrittenFile } from './messages.ts';

/** Hands over the files of exports, one at a time: the next when the one before has been written. */
export interface ExportStreams {
  /** Ends when the last file is handed over, or the export is refused, has failed or is stopped. */
  readonly begin: (call: number, choice: OutputChoice | undefined) => Promise<void>;
  /** A file of this export has been written. */
  readonly listed: (call: number, file: WrittenFile) => void;
  readonly stop: (call: number) => void;
}

/** What `listed` or `stop` of a running export leads to. */
interface Running {
  readonly listed: (file: WrittenFile) => void;
  readonly stop: () => void;
}

const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve);
  });

export function exportStreams(
  port: Port<FromWorker, ToWorker>,
  session: Pick<DesignSession, 'output'>,
  loadManifold: BundleWatch['manifold'],
): ExportStreams {
  const running = new Map<number, Running>();

  async function streamFiles(call: number, output: Output): Promise<void> {
    const listed: ListedFile[] = [];
    let stopped = false;
    running.set(call, {
      listed() {},
      stop() {
        stopped = true;
      },
    });
    /** Hands a file over and waits until it is written; undefined when the export has been stopped. */
    const written = ({ path, content }: BundleFile): Promise<WrittenFile | undefined> =>
      new Promise((resolve) => {
        running.set(call, {
          listed: resolve,
          stop() {
            stopped = true;
            resolve(undefined);
          },
        });
        port.post({ kind: 'file', call, file: { path, content } });
      });
    const watch: BundleWatch = {
      stop: () => stopped,
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
        if (stopped || result === undefined) return;
        const { path, report } = file;
        listed.push({ path, ...result, ...(report === undefined ? {} : { report }) });
      }
      port.post({ kind: 'progress', call, done: step.done, of: step.of });
      // Without a file nothing was waited for, and a stop is heard only while something is.
      if (step.files.length === 0) await nextTask();
      if (stopped) return;
    }
    await written({ path: 'manifest.json', content: output.manifest(listed) });
    if (!stopped) port.post({ kind: 'exported', call, files: listed.length + 1 });
  }

  return {
    async begin(call, choice) {
      const { value: output, findings } = session.output(choice);
      if (output === null) {
        port.post({ kind: 'refused', call, findings });
        return;
      }
      try {
        await streamFiles(call, output);
      } catch (problem) {
        port.post({ kind: 'failed', revision: null, call, reason: String(problem) });
      } finally {
        running.delete(call);
      }
    },
    listed: (call, file) => running.get(call)?.listed(file),
    stop: (call) => running.get(call)?.stop(),
  };
}
