import type { Corner, ScrewPlace } from '../../../fastening/types.ts';
import type { LengthUnit } from '../../../units/unit.ts';
import { roundTo } from '../../../units/tolerances.ts';
import { line, point, text } from '../page/draw.ts';
import { paragraph, LINE, type Column, type Flow } from '../page/paragraph.ts';
import { shorten } from '../page/shorten.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem, TextWidth } from '../page/types.ts';
import { wrap } from '../page/wrap.ts';
import type { PaperWords } from '../words/en.ts';
import { placeText } from './numbers.ts';
import { membersOf, type PaperSetup, type SetupVariant } from './types.ts';

/** The corners as they lie in the back view, whose left is the cabinet's right. */
const CORNERS: readonly Corner[] = [
  { end: 'bottom', hand: 'right' },
  { end: 'bottom', hand: 'left' },
  { end: 'top', hand: 'right' },
  { end: 'top', hand: 'left' },
];

/** A line of a cell. */
interface CellLine {
  readonly words: string;
  readonly bold: boolean;
}

interface TableColumn {
  /** Its share of what is left beside the others. */
  readonly share: number;
  readonly head: string;
  readonly cell: (variant: SetupVariant) => readonly CellLine[];
}

/**
 * A row for each variant of a setup: at each corner of the box the drill guide and, screw by screw, how it leans and
 * where it goes in; the template for the pull. Nothing where no screw is planned.
 */
export function cornerTable(setup: PaperSetup, column: Column, words: PaperWords, measure: TextWidth): Flow {
  const { x, top, width, size } = column;
  const columns = columnsOf(setup, words);
  if (columns.length === 0) return { items: [], bottom: top };
  const heading = paragraph(words.sheets.screws, { ...column, size: size * 1.25, bold: true }, measure);
  const about = paragraph(words.sheets.screwsAbout, { ...column, top: heading.bottom }, measure);
  const items: PaperItem[] = [...heading.items, ...about.items];
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  let left = x;
  const placed = columns.map((one) => {
    const w = (one.share / total) * width;
    left += w;
    return { ...one, x: left - w, w: w - 2 };
  });
  const heads = placed.map((one) => wrap(one.head, one.w, size, measure, true));
  let y = about.bottom - size * 0.3;
  const put = (lines: readonly CellLine[], at: { readonly x: number; readonly w: number }): void => {
    items.push(
      ...lines.map(({ words: said, bold }, index) =>
        text(shorten(said, at.w, size, measure, bold), point(at.x, y - size - index * size * LINE), size, {
          bold,
        }),
      ),
    );
  };
  const rule = (lines: number): void => {
    y -= lines * size * LINE + size * 0.35;
    items.push(line(point(x, y), point(x + width, y), STROKES.rule));
    y -= size * 0.1;
  };
  for (const [index, one] of placed.entries()) put((heads[index] ?? []).map(boldLine), one);
  rule(Math.max(...heads.map(({ length }) => length)));
  for (const variant of setup.variants) {
    const cells = placed.map((one) =>
      one
        .cell(variant)
        .flatMap(({ words: said, bold }) =>
          wrap(said, one.w, size, measure, bold).map((row) => ({ words: row, bold })),
        ),
    );
    for (const [index, one] of placed.entries()) put(cells[index] ?? [], one);
    rule(Math.max(...cells.map(({ length }) => length)));
  }
  return { items, bottom: y };
}

const boldLine = (words: string): CellLine => ({ words, bold: true });
const plainLine = (words: string): CellLine => ({ words, bold: false });

function columnsOf(setup: PaperSetup, words: PaperWords): readonly TableColumn[] {
  const members = membersOf(setup);
  const { variants } = setup;
  const { sheets: sheet } = words;
  const placesOf = ({ members: [first] }: SetupVariant) => first?.fastening?.places ?? [];
  if (variants.every((variant) => placesOf(variant).length === 0) && variants.length === 1) return [];
  const unit = members[0]?.fit.unit ?? 'mm';
  const pulls = ({ aids }: SetupVariant) => aids.filter(({ corner }) => corner === null).map(({ id }) => id);
  return [
    ...(variants.length > 1
      ? [{ share: 1, head: sheet.columns.name, cell: ({ name }: SetupVariant) => [boldLine(name)] }]
      : []),
    ...(variants.some((variant) => pulls(variant).length > 0)
      ? [
          {
            share: 1,
            head: sheet.pull,
            cell: (variant: SetupVariant) => pulls(variant).map(boldLine),
          },
        ]
      : []),
    ...CORNERS.map((corner) => ({
      share: 3.4,
      head: sheet.cornerHead(words.capitalEdges[corner.end], words.edges[corner.hand]),
      cell: (variant: SetupVariant) => cornerLines(corner, variant, placesOf(variant), unit, words),
    })),
  ];
}

/** Which way the tip of a leaning bit goes that nothing guides; '' for a straight one. */
function wayWords({ lean, corner }: ScrewPlace, { sheets }: PaperWords): string {
  const ways = [
    { edge: 'side', degrees: roundTo(lean.side, 1) } as const,
    { edge: corner.end, degrees: roundTo(lean.rail, 1) },
  ].filter(({ degrees }) => degrees > 0);
  return ways.length === 0 ? '' : sheets.leanWay(ways);
}

/** The guide, or that there is none, and each screw; those that the guide does not reach say so. */
function cornerLines(
  corner: Corner,
  { aids }: SetupVariant,
  places: readonly ScrewPlace[],
  unit: LengthUnit,
  words: PaperWords,
): readonly CellLine[] {
  const { sheets: sheet } = words;
  const isHere = (one: Corner | null) => one?.end === corner.end && one.hand === corner.hand;
  const own = places.filter((place) => isHere(place.corner)).toSorted((a, b) => a.index - b.index);
  if (own.length === 0) return [plainLine(words.checklist.none)];
  const guide = aids.find((aid) => isHere(aid.corner));
  const said =
    guide === undefined
      ? plainLine(sheet.byHand)
      : boldLine(
          guide.screws.length < guide.bores ? sheet.firstBores(guide.id, guide.screws.length) : guide.id,
        );
  return [
    said,
    ...own.map((place) =>
      plainLine(
        sheet.screwAt(
          roundTo(place.angle, 1),
          placeText(place.fromSide, unit),
          placeText(place.fromEnd, unit),
          guide?.screws.includes(place.index) === true ? '' : wayWords(place, words),
          guide !== undefined && !guide.screws.includes(place.index),
        ),
      ),
    ),
  ];
}
