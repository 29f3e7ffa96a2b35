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
  const uses = keepUses<JigUse, DraftUse>((rowId, { edge, jig, overhang, adjustment }) => ({
    rowId,
    edge,
    jigId: jig.id,
    overhang,
    adjustment,
  }));
  const aids = keepUses<AidUse, DraftAid>((rowId, { corner, jig }) => ({ rowId, corner, jigId: jig.id }));
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

/** Tells of the uses of jigs; of a drawer that uses the very same ones as before it is kept. */
function keepUses<Use extends { readonly fit: DrawerFit }, Told>(tellOne: (rowId: string, use: Use) => Told) {
  const known = new Map<string, { uses: readonly Use[]; told: readonly Told[]; round: number }>();
  let round = 0;
  return {
    /** A drawer's uses must stand together. */
    tell(uses: readonly Use[], idOf: (fit: DrawerFit) => string): readonly Told[] {
      const all: Told[] = [];
      for (let from = 0; from < uses.length;) {
        const fit = uses[from]?.fit;
        if (fit === undefined) break;
        let to = from + 1;
        while (uses[to]?.fit === fit) to += 1;
        const rowId = idOf(fit);
        const before = known.get(rowId);
        if (before !== undefined && isRun(before.uses, uses, from, to)) {
          before.round = round;
          all.push(...before.told);
        } else {
          const own = uses.slice(from, to);
          const told = own.map((use, index) => {
            const now = tellOne(rowId, use);
            return keepSame(before?.told[index], now) ?? now;
          });
          known.set(rowId, { uses: own, told, round });
          all.push(...told);
        }
        from = to;
      }
      return all;
    },
    endRound() {
      known.forEach((entry, rowId) => {
        if (entry.round !== round) known.delete(rowId);
      });
      round += 1;
    },
  };
}

/** Whether a drawer's uses are the very ones from one place in a list to another. */
function isRun<T>(own: readonly T[], all: readonly T[], from: number, to: number): boolean {
  if (own.length !== to - from) return false;
  for (let index = 0; index < own.length; index += 1) if (own[index] !== all[from + index]) return false;
  return true;
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
