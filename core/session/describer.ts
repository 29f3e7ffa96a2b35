import { keepSame, sameData } from '../collections/same-data.ts';
import type { Finding, Outcome } from '../findings/finding.ts';
import type { Fastening } from '../fastening/types.ts';
import type { AdjustmentBudget } from '../fit/budget/types.ts';
import { canHang } from '../fit/can-hang.ts';
import type { SeasonBudget } from '../fit/seasons/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { AidUse } from '../jigs/aids/plan-types.ts';
import type { OrderPlan } from '../jigs/plan-order.ts';
import type { JigUse } from '../jigs/plan-types.ts';
import type { Shared } from '../jigs/sharing/share-order.ts';
import type { Order } from '../order/types.ts';
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
  /** Whether every stage has been gone through. */
  readonly isWhole: boolean;
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
  const uses = keepUses<JigUse, DraftUse>(
    (rowId, { edge, jig, overhang, adjustment }) => ({ rowId, edge, jigId: jig.id, overhang, adjustment }),
    (a, b) =>
      a.edge === b.edge && a.jig === b.jig && a.overhang === b.overhang && a.adjustment === b.adjustment,
  );
  const aids = keepUses<AidUse, DraftAid>(
    (rowId, { corner, jig }) => ({ rowId, corner, jigId: jig.id }),
    (a, b) => a.corner === b.corner && a.jig === b.jig,
  );
  return {
    describe(draft, revision, stages, before) {
      const { order, fitted, budgeted, followed, fastened, shared, plan, made, isWhole } = stages;
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
        isWhole,
        findings: keepList(
          before?.findings,
          findings.map((finding) =>
            told.get(`${finding.code} ${finding.message}`, rowId(finding.at.row), finding),
          ),
        ),
        // What cannot hang has an error of its own, and nothing that could be drawn.
        fits: keepRecord(before?.fits, fitted.value.filter(canHang), idOf),
        budgets: keepRecord(before?.budgets, budgeted.value, ({ fit }) => idOf(fit)),
        seasons: keepRecord(before?.seasons, followed.value, ({ fit }) => idOf(fit)),
        fastenings: keepRecord(before?.fastenings, fastened.value, ({ fit }) => idOf(fit)),
        jigs: keepList(before?.jigs, plan.value.jigs),
        aids: keepList(before?.aids, aids.tell(plan.value.aids, idOf)),
        uses: keepList(before?.uses, uses.tell(plan.value.uses, idOf)),
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

/** Tells of the uses of jigs drawer by drawer; of a drawer that uses the very same ones it is kept. */
function keepUses<Use extends { readonly fit: DrawerFit }, Told>(
  tellOne: (rowId: string, use: Use) => Told,
  isSame: (before: Use, after: Use) => boolean,
) {
  const kept = keyedMemo<string, [string, readonly Use[]], readonly Told[]>(
    (rowId, uses) => uses.map((use) => tellOne(rowId, use)),
    {
      same: ([, before], [, uses]) =>
        before.length === uses.length &&
        before.every((use, index) => {
          const now = uses[index];
          return now !== undefined && use.fit === now.fit && isSame(use, now);
        }),
      keep: (before, after) => after.map((told, index) => keepSame(before[index], told) ?? told),
    },
  );
  return {
    /** A drawer's uses must stand together. */
    tell: (uses: readonly Use[], idOf: (fit: DrawerFit) => string): readonly Told[] =>
      runsOf(uses).flatMap(([fit, own]) => {
        const rowId = idOf(fit);
        return kept.get(rowId, rowId, own);
      }),
    endRound: kept.endRound,
  };
}

/** Uses drawer by drawer. */
function runsOf<Use extends { readonly fit: DrawerFit }>(
  uses: readonly Use[],
): readonly (readonly [DrawerFit, readonly Use[]])[] {
  const runs: [DrawerFit, readonly Use[]][] = [];
  let from = 0;
  for (const [index, { fit }] of uses.entries()) {
    if (uses[index + 1]?.fit === fit) continue;
    runs.push([fit, uses.slice(from, index + 1)]);
    from = index + 1;
  }
  return runs;
}

/** The record that was there before if the later one would hold the very same items. */
function keepRecord<T>(
  before: Readonly<Record<string, T>> = {},
  items: readonly T[],
  idOf: (item: T) => string,
): Readonly<Record<string, T>> {
  const isSame =
    Object.keys(before).length === items.length && items.every((item) => before[idOf(item)] === item);
  if (isSame) return before;
  // An object with a prototype grows three names at a time, which throws away twenty times as much.
  const record: Record<string, T> = Object.create(null);
  for (const item of items) record[idOf(item)] = item;
  return record;
}
