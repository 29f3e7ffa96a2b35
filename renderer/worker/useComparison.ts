import { use, useEffect, useRef, useState } from 'react';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { FitComparison } from '../../core/session/compare-fits.ts';
import type { MachineComparison } from '../../core/session/compare-machines.ts';
import { ComparerContext } from './comparer.ts';
import { newestOnly, type NewestOnly } from './newest-only.ts';

/** What a tried standard does to the draft; the last answer stays until the next is there. Null: nothing is tried. */
export const useStandardComparison = (draft: Draft, tried: ShopStandard | null): FitComparison | null =>
  useComparison(draft, tried, use(ComparerContext).standard);

/** What a tried machine does to the draft; the last answer stays until the next is there. Null: nothing is tried. */
export const useMachineComparison = (draft: Draft, tried: MachineProfile | null): MachineComparison | null =>
  useComparison(draft, tried, use(ComparerContext).machine);

function useComparison<T, R>(
  draft: Draft,
  tried: T | null,
  compare: (draft: Draft, tried: T) => Promise<R | null>,
): R | null {
  const [answer, setAnswer] = useState<R | null>(null);
  const line = useRef<NewestOnly | null>(null);
  useEffect(() => {
    line.current ??= newestOnly();
    line.current(
      async () => (tried === null ? null : compare(draft, tried)),
      (found) => setAnswer(found),
    );
  }, [draft, tried, compare]);
  // What was tried before is not told of nothing.
  return tried === null ? null : answer;
}
