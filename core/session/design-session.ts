import { keepSame } from '../collections/same-data.ts';
import { bundleOrder, type BundleStep } from '../bundle.ts';
import { manifest, type ListedFile } from '../files/manifest.ts';
import { partPaths } from '../files/part-paths.ts';
import type { Finding } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { StrokeFont } from '../parts/stroke-font.ts';
import type { Design, Workshop } from '../pipeline.ts';
import type { Draft } from '../project/draft.ts';
import { fitter } from './fitter.ts';
import { jigMaker } from './jig-maker.ts';
import { keepList, keyedMemo } from './keyed-memo.ts';
import { partMaker } from './part-maker.ts';
import { draftReader } from './read-draft.ts';
import type { Designed, DraftFinding, DraftUse, PartDetail } from './types.ts';

/** The files of an order's folder, to be written one after another. */
export interface Output {
  /** Every file but the manifest. */
  readonly steps: () => Generator<BundleStep>;
  /** The text of `manifest.json` for the files as they were written. */
  readonly manifest: (files: readonly ListedFile[]) => string;
}

/** Designs one draft after another, doing again only what depends on what has changed. */
export interface DesignSession {
  /** All that a draft comes to: what a new session would give, with what did not change left as it was. */
  readonly design: (draft: Draft, revision: number) => Designed;
  /** A part of the last design, with its contours; null when it has no such part. */
  readonly part: (partId: string) => PartDetail | null;
  /** The files of the last design; null before the first, and when anything in it is an error. */
  readonly output: () => Output | null;
}

interface Last {
  readonly designed: Designed;
  readonly design: Design;
  readonly findings: readonly Finding[];
  readonly workshop: Workshop;
}

/** A session without a design yet; the font is that of engraved text. */
export function createDesignSession(font: StrokeFont): DesignSession {
  const [reader, fits, jigs, parts] = [draftReader(), fitter(), jigMaker(), partMaker(font)];
  const told = keyedMemo<string, [string | null, Finding], DraftFinding>(
    (rowId, finding) => ({ rowId, finding }),
    { keep: keepSame },
  );
  const uses = keyedMemo<string, [string, Edge, string, number], DraftUse>(
    (rowId, edge, jigId, overhang) => ({ rowId, edge, jigId, overhang }),
  );
  const memos = [reader, fits, jigs, parts, told, uses];
  let last: Last | undefined;

  return {
    design(draft, revision) {
      const { standard, machine, registration } = draft;
      const rowId = (row: number | undefined): string | null => draft.rows[(row ?? 0) - 1]?.id ?? null;

      const order = reader.read(draft);
      const fitted = fits.fit(order.value, standard);
      const faulty = new Set(
        fitted.findings.filter(({ severity }) => severity === 'error').map(({ at }) => at.row),
      );
      const sound = fitted.value.filter(({ drawer }) => !faulty.has(drawer.row));
      const plan = jigs.plan(sound, registration, order.value, machine);
      const made = parts.make(plan.value.jigs, machine);
      const findings = [...order.findings, ...fitted.findings, ...plan.findings, ...made.findings];

      const before = last?.designed;
      const designed: Designed = {
        revision,
        findings: keepList(
          before?.findings,
          findings.map((finding) =>
            told.get(`${finding.code} ${finding.message}`, rowId(finding.at.row), finding),
          ),
        ),
        fits: keepRecord(
          before?.fits,
          fitted.value.filter(hasSizes).map((fit) => [rowId(fit.drawer.row) ?? '', fit]),
        ),
        jigs: keepList(before?.jigs, plan.value.jigs),
        uses: keepList(
          before?.uses,
          plan.value.uses.map(({ fit, edge, jig, overhang }) => {
            const id = rowId(fit.drawer.row) ?? '';
            return uses.get(`${id} ${edge} ${jig.id}`, id, edge, jig.id, overhang);
          }),
        ),
        parts: keepList(
          before?.parts,
          made.value.map((part) => parts.summaryOf(part)),
        ),
      };
      for (const memo of memos) memo.endRound();
      last = {
        designed,
        design: { order: order.value, fits: fitted.value, plan: plan.value, parts: made.value },
        findings,
        workshop: { standard, machine, registration, font },
      };
      return designed;
    },

    part(partId) {
      const part = last?.design.parts.find(({ id }) => id === partId);
      return part === undefined || last === undefined ? null : parts.detailOf(part, last.workshop.machine);
    },

    output() {
      if (last === undefined || hasErrors(last.findings)) return null;
      const { design, findings, workshop } = last;
      return {
        steps: () => bundleOrder(design, findings, workshop),
        manifest: (files) =>
          manifest({
            ...design,
            standard: workshop.standard,
            machine: workshop.machine,
            files: files.toSorted((a, b) => (a.path < b.path ? -1 : 1)),
            pathsOf: partPaths(workshop.machine.dxf.unit),
          }),
      };
    },
  };
}

/** A fit without box or front has an error of its own, and nothing that could be drawn. */
const hasSizes = ({ boxW, boxH, frontW, frontH }: DrawerFit): boolean =>
  Math.min(boxW, boxH, frontW, frontH) > 0;

function keepRecord<T>(
  before: Readonly<Record<string, T>> | undefined,
  entries: readonly (readonly [string, T])[],
): Readonly<Record<string, T>> {
  const same =
    before !== undefined &&
    Object.keys(before).length === entries.length &&
    entries.every(([key, value]) => before[key] === value);
  return same ? before : Object.fromEntries(entries);
}
