import { bundleOrder, type BundleStep, type BundleWatch } from '../bundle.ts';
import { manifest, type ListedFile } from '../files/manifest.ts';
import { checkChoice, USUAL, type OutputChoice } from '../files/output-choice.ts';
import { partPaths } from '../files/part-paths.ts';
import type { Outcome } from '../findings/finding.ts';
import type { WholeDesign } from './design-session.ts';

/** The files of an order's folder, to be written one after another. */
export interface Output {
  /** Every file but the manifest. */
  readonly steps: (watch?: BundleWatch) => AsyncGenerator<BundleStep>;
  /** The text of `manifest.json` for the files as they were written. */
  readonly manifest: (files: readonly ListedFile[]) => string;
}

/**
 * The chosen files of a session's design; null where there is none, and when anything in it or in the choice is an
 * error, with the errors as findings.
 */
export function sessionOutput(
  whole: WholeDesign | null,
  choice: OutputChoice = USUAL,
): Outcome<Output | null> {
  if (whole === null) return { value: null, findings: [] };
  const { design, findings, workshop } = whole;
  const errors = [
    ...findings.filter(({ severity }) => severity === 'error'),
    ...checkChoice(
      choice,
      design.plan.jigs.map(({ id }) => id),
    ),
  ];
  if (errors.length > 0) return { value: null, findings: errors };
  const value: Output = {
    steps: (watch) => bundleOrder(design, findings, workshop, choice, watch),
    manifest: (files) =>
      manifest({
        ...design,
        standard: workshop.standard,
        machine: workshop.machine,
        files: files.toSorted((a, b) => (a.path < b.path ? -1 : 1)),
        pathsOf: partPaths(workshop.machine.dxf.unit),
        choice,
      }),
  };
  return { value, findings: [] };
}
