import { useCallback, useEffect, useRef } from 'react';
import { create } from 'zustand';
import type { Designed } from '../../core/session/types.ts';
import type { CountedRework } from '../worker/connect-design.ts';
import type { ReworkShown } from './GapsView.tsx';

type Counted = Pick<Designed, 'budgets' | 'uses'>;

interface Counting {
  readonly state: 'none' | 'counting' | 'counted' | 'failed';
  readonly last: CountedRework | null;
}

/** The last count for as long as the program runs, so that going from stage to stage counts nothing again. */
const useCounting = create<Counting>()(() => ({ state: 'none', last: null }));

/**
 * The rework that an order's fronts will need. It is counted when the stage is first shown for a design, then only
 * when somebody asks: `count` null on a fault of the program.
 */
export function useRework(
  designed: Counted | null,
  count: () => Promise<CountedRework | null>,
): readonly [ReworkShown, () => void] {
  const { state, last } = useCounting();
  const ask = useCallback(async () => {
    if (useCounting.getState().state === 'counting') return;
    useCounting.setState({ state: 'counting' });
    const counted = await count();
    useCounting.setState(counted === null ? { state: 'failed' } : { state: 'counted', last: counted });
  }, [count]);
  const shown = useRef(false);
  useEffect(() => {
    if (designed === null || shown.current) return;
    shown.current = true;
    if (!isOf(useCounting.getState().last, designed)) void ask();
  }, [designed, ask]);
  const earlier = state === 'counted' && !isOf(last, designed);
  return [{ state: earlier ? 'earlier' : state, answer: last?.answer ?? null }, () => void ask()];
}

/** Whether it was counted from this design: other fields have no say in it. */
const isOf = (last: CountedRework | null, designed: Counted | null): boolean =>
  last !== null && last.of.budgets === designed?.budgets && last.of.uses === designed.uses;
