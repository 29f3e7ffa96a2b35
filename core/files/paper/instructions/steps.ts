import { formatLength } from '../../../units/format-length.ts';
import type { PaperWords } from '../words/en.ts';
import { cornerText } from './corner-text.ts';
import type { PaperSetup, SetupAid } from './types.ts';

/** What to do, in order: with the setup's jigs, or over its paper template where no jig serves it. */
export function setupSteps(
  { jigs, aids, members: [first] }: PaperSetup,
  words: PaperWords,
): readonly string[] {
  if (first === undefined) return [];
  const sheet = words.sheets;
  const start = first.fit.rules.startLow.value;
  const { template } = first;
  const register =
    jigs.length > 0
      ? [
          ...jigs.map(({ id, edges }) =>
            sheet.seat(id, edges.map((edge) => words.edges[edge]).join(words.and)),
          ),
          sheet.setBox,
        ]
      : template === null
        ? [sheet.measureIn]
        : [sheet.paper(template), sheet.setOnPaper];
  return [
    sheet.lay,
    ...pullSteps(aids, words),
    ...register,
    sheet.clamp,
    drilling(aids, words),
    sheet.drive,
    ...(jigs.length > 0 ? [sheet.lift] : []),
    start > 0 ? sheet.hang(formatLength(start, first.fit.unit)) : sheet.hangMiddle,
  ];
}

/** The pull's holes go right through the front, into a board below it, before the box is in the way. */
function pullSteps(aids: readonly SetupAid[], { and, sheets }: PaperWords): readonly string[] {
  const pulls = aids.filter(({ corners }) => corners.length === 0);
  return pulls.length === 0 ? [] : [sheets.pulls(pulls.map(({ id }) => id).join(and))];
}

/** Through the guides of the setup, or free hand where it has none. */
function drilling(aids: readonly SetupAid[], words: PaperWords): string {
  const { sheets: sheet } = words;
  const guides = aids.filter(({ corners }) => corners.length > 0);
  const corners = (guide: SetupAid) => sheet.list(guide.corners.map((corner) => cornerText(corner, words)));
  return guides.length === 0
    ? sheet.drill
    : sheet.guides(sheet.list(guides.map((guide) => sheet.guide(guide.id, corners(guide)))));
}
