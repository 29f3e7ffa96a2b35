import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { isUsual, OUTPUT_KINDS, PAPER_KINDS, type OutputKindId } from './output-kinds.ts';
import { checkPaper } from './paper/sheet/check-paper.ts';
import { USUAL_PAPER, type PaperSettings } from './paper/sheet/settings.ts';

/** Which files of an order are written. */
export interface OutputChoice {
  readonly kinds: readonly OutputKindId[];
  /** The jigs whose parts are written, by id. */
  readonly jigs: 'all' | readonly string[];
  /** What the sheets to print are for. */
  readonly paper: PaperSettings;
}

/** Every file that there is. */
export const EVERYTHING: OutputChoice = {
  kinds: OUTPUT_KINDS.map(({ id }) => id),
  jigs: 'all',
  paper: USUAL_PAPER,
};

/** What is written unless somebody chooses. */
export const USUAL: OutputChoice = { ...EVERYTHING, kinds: EVERYTHING.kinds.filter(isUsual) };

export const includesKind = ({ kinds }: OutputChoice, id: OutputKindId): boolean => kinds.includes(id);

/** Whether parts are written one by one, as DXF or SVG. */
export const includesParts = (choice: OutputChoice): boolean =>
  includesKind(choice, 'dxf') || includesKind(choice, 'svg');

export const includesJig = ({ jigs }: OutputChoice, id: string): boolean =>
  jigs === 'all' || jigs.includes(id);

/** What a choice leaves out of an order with these jigs. */
export const leftOut = (
  choice: OutputChoice,
  jigIds: readonly string[],
): { readonly kinds: readonly OutputKindId[]; readonly jigs: readonly string[] } => ({
  kinds: OUTPUT_KINDS.map(({ id }) => id).filter((id) => !includesKind(choice, id)),
  jigs: jigIds.filter((id) => !includesJig(choice, id)),
});

/** Why a choice cannot be written for an order with these jigs: nothing is chosen, or a jig that there is not. */
export function checkChoice(choice: OutputChoice, jigIds: readonly string[]): readonly Finding[] {
  const findings: Finding[] = [];
  if (choice.kinds.length === 0) {
    const labels = OUTPUT_KINDS.map(({ label }) => label).join(', ');
    findings.push(error('files/no-kind', `No file is chosen; choose at least one of ${labels}.`));
  }
  if (PAPER_KINDS.some((id) => includesKind(choice, id))) findings.push(...checkPaper(choice.paper));
  if (choice.jigs === 'all') return findings;
  const accepted = jigIds.join(', ');
  if (choice.jigs.length === 0) {
    const ends = [jigIds[0], jigIds.at(-1)].join(' to ');
    findings.push(error('files/no-jig', `No jig is chosen; choose at least one, from ${ends}.`));
  }
  for (const id of new Set(choice.jigs)) {
    if (jigIds.includes(id)) continue;
    findings.push(
      error('files/unknown-jig', `This order has no jig "${id}"; its jigs are ${accepted}.`, {}, { jig: id }),
    );
  }
  return findings;
}
