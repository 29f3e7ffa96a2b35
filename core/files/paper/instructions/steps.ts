import { formatLength } from '../../../units/format-length.ts';
import type { LengthUnit } from '../../../units/unit.ts';
import type { PaperWords } from '../words/en.ts';
import { sideWords } from './numbers.ts';
import { membersOf, type PaperSetup, type SetupJig, type SetupVariant } from './types.ts';

/** What to do, in order: with the setup's jigs, or over its paper template where no jig serves it. */
export function setupSteps(setup: PaperSetup, words: PaperWords): readonly string[] {
  const { jigs, variants } = setup;
  const [first] = membersOf(setup);
  if (first === undefined) return [];
  const sheet = words.sheets;
  const { unit } = first.fit;
  const start = first.fit.rules.startLow.value;
  const register =
    jigs.length > 0
      ? [...jigs.map((jig) => seatStep(jig, unit, words)), sheet.setBox]
      : first.template === null
        ? [sheet.measureIn]
        : [sheet.paper(templatesOf(setup).join(words.or)), sheet.setOnPaper];
  return [
    sheet.lay,
    ...pullSteps(variants, words),
    ...register,
    sheet.clamp,
    ...drillSteps(setup, words),
    sheet.drive,
    ...(jigs.length > 0 ? [sheet.lift] : []),
    start > 0
      ? sheet.hang(formatLength(start, unit))
      : start < 0
        ? sheet.hangHigh(formatLength(-start, unit))
        : sheet.hangMiddle,
    ...(first.sideways === 0
      ? []
      : [sheet.hangSide(formatLength(Math.abs(first.sideways), unit), sideWords(first.sideways, words))]),
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

/** The pull's holes go right through the front, into a board below it, before the box is in the way. */
function pullSteps(variants: readonly SetupVariant[], { or, sheets }: PaperWords): readonly string[] {
  const pulls = new Set(
    variants.flatMap(({ aids }) => aids.filter(({ corner }) => corner === null).map(({ id }) => id)),
  );
  if (pulls.size === 0) return [];
  const all = variants.every(({ aids }) => aids.some(({ corner }) => corner === null));
  return [(all ? sheets.pulls : sheets.somePulls)([...pulls].join(or))];
}

/** Through guides where the table names one, and by its numbers where it does not. */
function drillSteps(setup: PaperSetup, { sheets: sheet }: PaperWords): readonly string[] {
  const members = membersOf(setup);
  const screwed = members.some(({ fastening }) => (fastening?.places.length ?? 0) > 0);
  if (!screwed) return [sheet.drill];
  const guides = setup.variants.some(({ aids }) => aids.some(({ corner }) => corner !== null));
  return [
    ...(guides ? [sheet.guides] : []),
    ...(setup.variants.some(hasByHand) ? [guides ? sheet.drillOthers : sheet.drillMarked] : []),
  ];
}

/** Whether any screw of a variant has no bore of a guide. */
function hasByHand({ aids, members: [first] }: SetupVariant): boolean {
  const guided = aids.reduce((sum, { screws }) => sum + screws.length, 0);
  return guided < (first?.fastening?.places.length ?? 0);
}
