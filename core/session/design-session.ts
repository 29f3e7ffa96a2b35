import type { Finding } from '../findings/finding.ts';
import { registeredSides } from '../jigs/sharing/hung-by.ts';
import type { Shared } from '../jigs/sharing/share-order.ts';
import type { SharingOf } from '../jigs/sharing/types.ts';
import type { StrokeFont } from '../parts/stroke-font.ts';
import type { Design, Workshop } from '../pipeline.ts';
import type { Draft } from '../project/draft.ts';
import { budgeter } from './budgeter.ts';
import { describer, type Stages } from './describer.ts';
import { fastener } from './fastener.ts';
import { fitter } from './fitter.ts';
import { jigMaker } from './jig-maker.ts';
import { partMaker } from './part-maker.ts';
import { seasonKeeper } from './season-keeper.ts';
import { draftReader } from './draft-reader.ts';
import type { Designed, PartDetail } from './types.ts';

/** Designs one draft after another, doing again only what depends on what has changed. */
export interface DesignSession {
  /** All that a draft comes to: what a new session would give, with what did not change left as it was. */
  readonly design: (draft: Draft, revision: number, shared?: Shared) => Designed;
  /**
   * The beginning of a draft's design, which is there long before the whole: fits and, where drawers share no jigs,
   * those that set overhangs.
   */
  readonly look: (draft: Draft, revision: number) => Designed;
  /** What the sharing of a draft's jigs depends on; to be shared before the very same draft is designed. */
  readonly toShare: (draft: Draft) => SharingOf;
  /** A part of the last design, with its contours; null when it has no such part. */
  readonly part: (partId: string) => PartDetail | null;
  /** What the files of the last design are made of (`sessionOutput`); null before the first. */
  readonly whole: () => WholeDesign | null;
}

/** A draft's whole design, with what was found in it. */
export interface WholeDesign {
  readonly design: Design;
  readonly findings: readonly Finding[];
  readonly workshop: Workshop;
}

interface Last extends WholeDesign {
  readonly designed: Designed;
}

const NOTHING_SHARED: Shared = { value: null, findings: [] };

/** Stages that are not waited for. */
const NOT_YET = {
  budgeted: { value: [], findings: [] },
  followed: { value: [], findings: [] },
  fastened: { value: [], findings: [] },
  shared: NOTHING_SHARED,
  plan: { value: { jigs: [], uses: [], aids: [] }, findings: [] },
  made: { value: [], findings: [] },
  isWhole: false,
} as const;

/** A session without a design yet; the font is that of engraved text. */
export function createDesignSession(font: StrokeFont): DesignSession {
  const [reader, fits, screws] = [draftReader(), fitter(), fastener()];
  const [jigs, parts, budgets, seasons] = [jigMaker(), partMaker(font), budgeter(), seasonKeeper()];
  const rows = describer(parts.summaryOf);
  const memos = [reader, fits, budgets, screws, jigs, parts, rows];
  let last: Last | undefined;

  /** The order of a draft, its fits, and those of them that are no error. */
  function fit(draft: Draft) {
    const order = reader.read(draft);
    const fitted = fits.fit(order.value, draft.standard);
    const faulty = new Set(
      fitted.findings.filter(({ severity }) => severity === 'error').map(({ at }) => at.row),
    );
    return { order, fitted, sound: fitted.value.filter(({ drawer }) => !faulty.has(drawer.row)) };
  }

  return {
    toShare(draft) {
      const { order, sound } = fit(draft);
      const { standard, machine, registration } = draft;
      return { fits: sound, standard, registration, context: jigs.contextOf(order.value, machine) };
    },

    look(draft, revision) {
      const { standard, machine, registration } = draft;
      const { order, fitted, sound } = fit(draft);
      const told = (stages: Stages) => rows.describe(draft, revision, stages, last?.designed).designed;
      if (draft.sharing !== 'each') return told({ ...NOT_YET, order, fitted });
      const plan = jigs.plan({ fits: sound, fastenings: [], registration, standard }, order.value, machine);
      return told({ ...NOT_YET, order, fitted, plan });
    },

    design(draft, revision, shared = NOTHING_SHARED) {
      const { standard, machine, registration } = draft;
      const { order, fitted, sound } = fit(draft);
      const followed = seasons.follow(sound, standard);
      const fastened = screws.fasten(sound, standard);
      const plan = jigs.plan(
        {
          fits: sound,
          fastenings: fastened.value,
          registration,
          standard,
          sharing: shared.value ?? undefined,
        },
        order.value,
        machine,
      );
      const budgeted = budgets.budget(sound, standard, registeredSides(plan.value.uses));
      const made = parts.make(plan.value.jigs, machine);
      const stages: Stages = {
        order,
        fitted,
        budgeted,
        followed,
        fastened,
        shared,
        plan,
        made,
        isWhole: true,
      };
      const { designed, findings } = rows.describe(draft, revision, stages, last?.designed);
      for (const memo of memos) memo.endRound();
      last = {
        designed,
        design: {
          order: order.value,
          fits: fitted.value,
          fastenings: fastened.value,
          plan: plan.value,
          parts: made.value,
        },
        findings,
        workshop: { standard, machine, registration, font },
      };
      return designed;
    },

    part(partId) {
      const part = last?.design.parts.find(({ id }) => id === partId);
      return part === undefined || last === undefined ? null : parts.detailOf(part, last.workshop.machine);
    },

    whole: () => last ?? null,
  };
}
