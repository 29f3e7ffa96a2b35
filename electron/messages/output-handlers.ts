import { randomUUID } from 'node:crypto';
import { unpackContent } from '../../shared/file-content.ts';
import { reasonOf, Refusal } from '../files/refusal.ts';
import { checkOutputPath } from './output-path.ts';
import type { OutputFolder, Ports } from './ports.ts';
import type { Handlers } from './router.ts';
import { checkSize } from './text-limit.ts';

type OutputChannel = 'output.begin' | 'output.write' | 'output.finish' | 'output.discard' | 'output.show';

/** Folders that may be in the making at once: one is usual, more are left over. */
const MAX_JOBS = 4;

/** Messages about folders of cut files. A job's id is known to nobody but who began it. */
export function outputHandlers({ output }: Ports): {
  readonly handlers: Handlers<OutputChannel>;
  readonly close: () => Promise<void>;
} {
  const jobs = new Map<string, OutputFolder>();
  const places = new Set<string>();
  const jobOf = (id: string): OutputFolder => {
    const job = jobs.get(id);
    if (job === undefined) throw new Refusal('this folder is finished, discarded or was never begun');
    return job;
  };
  const discard = async (id: string): Promise<void> => {
    const job = jobs.get(id);
    jobs.delete(id);
    await job?.discard();
  };
  const handlers: Handlers<OutputChannel> = {
    async 'output.begin'({ suggestedName }) {
      if (jobs.size >= MAX_JOBS) throw new Refusal('other folders are still being written');
      const folder = await output.begin(suggestedName);
      if (folder === null) return { ok: true, cancelled: true };
      const job = randomUUID();
      jobs.set(job, folder);
      return { ok: true, cancelled: false, job };
    },
    async 'output.write'({ job, path, content: packed }) {
      const folder = jobOf(job);
      checkOutputPath(path);
      const content = unpackContent(packed);
      checkSize(content);
      return { ok: true, ...(await folder.write(path, content)) };
    },
    async 'output.finish'({ job }) {
      const folder = jobOf(job);
      try {
        const finished = await folder.finish();
        jobs.delete(job);
        places.add(finished.place);
        return { ok: true, ...finished };
      } catch (problem) {
        await discard(job).catch(() => undefined);
        throw new Refusal(`the folder could not be put in its place: ${reasonOf(problem)}`);
      }
    },
    async 'output.discard'({ job }) {
      await discard(job).catch(() => undefined);
      return { ok: true };
    },
    async 'output.show'({ place }) {
      if (!places.has(place)) throw new Refusal('only folders that were written just now can be shown');
      await output.show(place);
      return { ok: true };
    },
  };
  const close = async (): Promise<void> => {
    await Promise.allSettled([...jobs.keys()].map(discard));
  };
  return { handlers, close };
}
