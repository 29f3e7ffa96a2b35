import type { Draft } from '../../core/project/draft.ts';

type WriteDraft = (draft: Draft) => string;

let writer: Promise<WriteDraft> | null = null;

/**
 * What writes drafts as documents, loaded once. It is asked for early, but after the first screen: work must be
 * written even if the program's own files can no longer be reached. Rejects where they could not be, and may be
 * asked again.
 */
export function draftWriter(): Promise<WriteDraft> {
  writer ??= import('../../core/project/write-draft.ts').then(
    ({ writeDraft }) => writeDraft,
    (problem: unknown) => {
      writer = null;
      throw problem;
    },
  );
  return writer;
}

/** Said where `draftWriter` rejects. */
export const NO_WRITER =
  'the program’s own files cannot be reached; see that its host is running, then try again';
