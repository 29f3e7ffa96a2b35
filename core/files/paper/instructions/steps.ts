import { formatLength } from '../../../units/format-length.ts';
import type { LengthUnit } from '../../../units/unit.ts';
import type { PaperWords } from '../words/en.ts';
import { drillSteps, isScrewed, stopStep } from './drill-steps.ts';
import { hangSteps } from './hang-steps.ts';
import { isSetOnPaper, pullsInBox, pullSteps } from './pull-steps.ts';
import { membersOf, type PaperSetup, type SetupJig } from './types.ts';

/** What to do, in order: with the setup's jigs, or by its paper template where no jig serves it. */
export function setupSteps(setup: PaperSetup, words: PaperWords): readonly string[] {
  const { jigs } = setup;
  const [first] = membersOf(setup);
  if (first === undefined) return [];
  const sheet = words.sheets;
  const { unit } = first.fit;
  const pulls = pullSteps(setup, words);
  const register =
    jigs.length > 0
      ? [...pulls, ...jigs.map((jig) => seatStep(jig, unit, words)), sheet.setBox]
      : isSetOnPaper(setup)
        ? // The paper has the pull's places too, so it comes first.
          [sheet.paper(templatesOf(setup).join(words.or)), ...pulls, sheet.setOnMarks]
        : [...pulls, sheet.measureIn];
  if (!isScrewed(setup)) return [sheet.lay, ...register, stopStep(setup, words)];
  return [
    sheet.lay,
    ...register,
    sheet.clamp,
    ...drillSteps(setup, words),
    sheet.drive,
    ...(jigs.length > 0 ? [sheet.lift] : []),
    ...pullsInBox(setup, words),
    ...hangSteps(setup, words),
  ];
}

const templatesOf = (setup: PaperSetup): readonly string[] => [
  ...new Set(membersOf(setup).flatMap(({ template }) => template ?? [])),
];

/** How a jig of its kind is put on; a block of two widths also by what its upper label says. */
function seatStep({ id, kind, edges, sets, twoWay }: SetupJig, unit: LengthUnit, words: PaperWords): string {
  const { sheets: sheet } = words;
  const at = edges.map((edge) => words.edges[edge]).join(words.and);
  const seat = sheet.seats[kind] ?? sheet.seat;
  const [set] = sets;
  return twoWay && set !== undefined
    ? `${seat(id, at)} ${sheet.labelUp(formatLength(set, unit))}`
    : seat(id, at);
}
