import type { ListedFile } from '../../core/files/manifest.ts';
import type { BundleFile } from '../../core/bundle.ts';
import { hasErrors } from '../../core/findings/make.ts';
import type { StrokeFont } from '../../core/parts/stroke-font.ts';
import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession, type Output } from '../../core/session/design-session.ts';
import { designedPatch, NO_DESIGN } from './designed-patch.ts';
import { patchedDraft } from './draft-patch.ts';
import type { FromWorker, Port, ToWorker, WrittenFile } from './messages.ts';

/** What `listed` or `stop` of a running export leads to. */
interface Running {
  readonly listed: (file: WrittenFile) => void;
  readonly stop: () => void;
}

/** Answers a port with one design session: the worker without its thread. */
export function serveDesign(port: Port<FromWorker, ToWorker>, font: StrokeFont): void {
  const session = createDesignSession(font);
  const exports = new Map<number, Running>();
  let draft: Draft | null = null;
  let sent = NO_DESIGN;

  function receive(message: ToWorker): void {
    switch (message.kind) {
      case 'design': {
        draft = patchedDraft(draft, message.patch);
        const designed = session.design(draft, message.revision);
        port.post({ kind: 'designed', patch: designedPatch(sent, designed) });
        sent = designed;
        return;
      }
      case 'part':
        port.post({ kind: 'part', call: message.call, detail: session.part(message.partId) });
        return;
      case 'export':
        void exportAll(message.call);
        return;
      case 'listed':
        exports.get(message.call)?.listed(message.file);
        return;
      case 'stop':
        exports.get(message.call)?.stop();
    }
  }

  async function exportAll(call: number): Promise<void> {
    const output = session.output();
    if (output === null) {
      const findings = sent.findings.map(({ finding }) => finding);
      port.post({ kind: 'refused', call, findings });
      return;
    }
    try {
      await streamFiles(call, output);
    } catch (problem) {
      port.post({ kind: 'failed', revision: null, call, reason: String(problem) });
    } finally {
      exports.delete(call);
    }
  }

  async function streamFiles(call: number, output: Output): Promise<void> {
    const listed: ListedFile[] = [];
    let stopped = false;
    /** Hands a file over and waits until it is written; undefined when the export has been stopped. */
    const written = ({ path, text }: BundleFile): Promise<WrittenFile | undefined> =>
      new Promise((resolve) => {
        exports.set(call, {
          listed: resolve,
          stop() {
            stopped = true;
            resolve(undefined);
          },
        });
        port.post({ kind: 'file', call, file: { path, text } });
      });
    for (const step of output.steps()) {
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
    }
    await written({ path: 'manifest.json', text: output.manifest(listed) });
    if (!stopped) port.post({ kind: 'exported', call, files: listed.length + 1 });
  }

  port.listen((message) => {
    try {
      receive(message);
    } catch (problem) {
      port.post({
        kind: 'failed',
        revision: message.kind === 'design' ? message.revision : null,
        call: message.kind === 'design' ? null : message.call,
        reason: String(problem),
      });
    }
  });
}
