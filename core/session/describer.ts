import { keepSame, sameData } from '../collections/same-data.ts';
import type { Finding, Outcome } from '../findings/finding.ts';
import type { Corner, Fastening } from '../fastening/types.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import { canHang } from '../fit/can-hang.ts';
import type { SeasonBudget } from '../fit/seasons/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { OrderPlan } from '../jigs/plan-order.ts';
import type { Shared } from '../jigs/sharing/share-order.ts';
import type { Edge, Order } from '../order/types.ts';
import type { Part } from '../parts/types.ts';
import type { Draft } from '../project/draft.ts';
import { keepList, keyedMemo } from './keyed-memo.ts';
import type { Designed, DraftAid, DraftFinding, DraftUse, PartSummary } from './types.ts';

/** What each stage of a design came to. */
export interface Stages {
  readonly order: Outcome<Order>;
  readonly fitted: Outcome<readonly DrawerFit[]>;
  readonly budgeted: Outcome<readonly AdjustmentBudget[]>;
  readonly followed: Outcome<readonly SeasonBudget[]>;
  readonly fastened: Outcome<readonly Fastening[]>;
  readonly shared: Shared;
  readonly plan: Outcome<OrderPlan>;
  readonly made: Outcome<readonly Part[]>;
}

/** Tells designs by the rows of their drafts, again and again: what is still the same is the very same object. */
export interface Describer {
  /** What the stages came to; of the design before, what is the same is kept. All findings, of all stages, too. */
  readonly describe: (
    draft: Draft,
    revision: number,
    stages: Stages,
    before: Designed | undefined,
  ) => { readonly designed: Designed; readonly findings: readonly Finding[] };
  readonly endRound: () => void;
}

export function describer(summaryOf: (part: Part) => PartSummary): Describer {
  const told = keyedMemo<string, [string | null, Finding], DraftFinding>(
    (rowId, finding) => ({ rowId, finding }),
    { keep: keepSame },
  );
  const uses = keyedMemo<string, [string, Edge, string, number, number], DraftUse>(
    (rowId, edge, jigId, overhang, adjustment) => ({ rowId, edge, jigId, overhang, adjustment }),
  );
  const aids = keyedMemo<string, [string, Corner | null, string], DraftAid>((rowId, corner, jigId) => ({
    rowId,
    corner,
    jigId,
  }));
  return {
    describe(draft, revision, stages, before) {
      const { order, fitted, budgeted, followed, fastened, shared, plan, made } = stages;
      const rowId = (row: number | undefined): string | null => draft.rows[(row ?? 0) - 1]?.id ?? null;
      const idOf = ({ drawer }: DrawerFit): string => rowId(drawer.row) ?? '';
      const findings = [
        ...order.findings,
        ...fitted.findings,
        ...budgeted.findings,
        ...followed.findings,
        ...fastened.findings,
        ...shared.findings,
        ...plan.findings,
        ...made.findings,
      ];
      const designed: Designed = {
        revision,
        findings: keepList(
          before?.findings,
          findings.map((finding) =>
            told.get(`${finding.code} ${finding.message}`, rowId(finding.at.row), finding),
          ),
        ),
        // What cannot hang has an error of its own, and nothing that could be drawn.
        fits: keepRecord(
          before?.fits,
          fitted.value.filter(canHang).map((one) => [idOf(one), one]),
        ),
        budgets: keepRecord(
          before?.budgets,
          budgeted.value.map((budget) => [idOf(budget.fit), budget]),
        ),
        seasons: keepRecord(
          before?.seasons,
          followed.value.map((season) => [idOf(season.fit), season]),
        ),
        fastenings: keepRecord(
          before?.fastenings,
          fastened.value.map((fastening) => [idOf(fastening.fit), fastening]),
        ),
        jigs: keepList(before?.jigs, plan.value.jigs),
        aids: keepList(
          before?.aids,
          plan.value.aids.map((aid) => {
            const { corner, jig } = aid;
            const id = idOf(aid.fit);
            return aids.get(`${id} ${corner?.hand} ${corner?.end} ${jig.id}`, id, corner, jig.id);
          }),
        ),
        uses: keepList(
          before?.uses,
          plan.value.uses.map((use) => {
            const { edge, jig, overhang, adjustment } = use;
            const id = idOf(use.fit);
            return uses.get(`${id} ${edge} ${jig.id}`, id, edge, jig.id, overhang, adjustment);
          }),
        ),
        sharing:
          before !== undefined && sameData(before.sharing, shared.value) ? before.sharing : shared.value,
        parts: keepList(
          before?.parts,
          made.value.map((part) => summaryOf(part)),
        ),
      };
      return { designed, findings };
    },
    endRound() {
      for (const memo of [told, uses, aids]) memo.endRound();
    },
  };
}

/** The record that was there before as far as it holds the same items. */
function keepRecord<T>(
  before: Readonly<Record<string, T>> | undefined,
  entries: readonly (readonly [string, T])[],
): Readonly<Record<string, T>> {
  if (before === undefined || Object.keys(before).length !== entries.length)
    return Object.fromEntries(entries);
  const changed = entries.filter(([key, value]) => before[key] !== value);
  if (changed.length === 0) return before;
  const isOfSameRows = changed.every(([key]) => Object.hasOwn(before, key));
  return isOfSameRows ? { ...before, ...Object.fromEntries(changed) } : Object.fromEntries(entries);
}
