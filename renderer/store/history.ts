import { sameData } from '../../core/collections/same-data.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { History, HistoryStep } from './types.ts';

export const NO_HISTORY: History = { past: [], future: [] };

/** Steps that are kept; drafts share what did not change, so that a step is small. */
const KEPT = 1000;

interface Remembered {
  readonly history: History;
  readonly draft: Draft;
}

/**
 * A change to `draft`, remembered with the draft before it; a change with the last one's merge key belongs
 * to its step. Typing that ends where it began is no step, and the draft is the one from before.
 */
export function remembered(history: History, step: HistoryStep, draft: Draft): Remembered {
  const last = history.past.at(-1);
  const merges =
    last !== undefined &&
    step.mergeKey !== null &&
    last.mergeKey === step.mergeKey &&
    history.future.length === 0;
  if (!merges) return { history: { past: [...history.past, step].slice(-KEPT), future: [] }, draft };
  if (!sameData(last.draft, draft)) return { history, draft };
  return { history: { past: history.past.slice(0, -1), future: [] }, draft: last.draft };
}

/** Ends the last step: what is typed next is a step of its own. */
export function settled(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined || last.mergeKey === null) return history;
  return { ...history, past: [...history.past.slice(0, -1), { ...last, mergeKey: null }] };
}

interface Turned {
  readonly history: History;
  readonly draft: Draft;
  readonly rowId: string | null;
}

/** One step back from this draft; undefined when there is none. */
export function steppedBack({ past, future }: History, draft: Draft): Turned | undefined {
  const step = past.at(-1);
  if (step === undefined) return undefined;
  const history = { past: past.slice(0, -1), future: [...future, { ...step, draft, mergeKey: null }] };
  return { history, draft: step.draft, rowId: step.rowId };
}

/** One step forward again from this draft; undefined when there is none. */
export function steppedForward({ past, future }: History, draft: Draft): Turned | undefined {
  const step = future.at(-1);
  if (step === undefined) return undefined;
  const history = { past: [...past, { ...step, draft, mergeKey: null }], future: future.slice(0, -1) };
  return { history, draft: step.draft, rowId: step.rowId };
}
