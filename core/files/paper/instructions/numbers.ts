import { depthStop } from '../../../fastening/depth-stop.ts';
import type { Fastening, Holes } from '../../../fastening/types.ts';
import type { LengthUnit } from '../../../order/types.ts';
import { groupBy } from '../../../collections/group-by.ts';
import { INCH } from '../../../units/inch-fraction.ts';
import { formatLength } from '../../../units/format-length.ts';
import { roundTo } from '../../../units/tolerances.ts';
import type { PaperWords } from '../words/en.ts';
import { cornerText } from './corner-text.ts';
import { sharedOverhangs } from './shared-overhangs.ts';
import type { PaperSetup } from './types.ts';

/** The numbers of a setup in the shop's unit: overhangs, screws, bit, depth stop, adjusters. */
export function setupNumbers({ members }: PaperSetup, words: PaperWords): readonly string[] {
  const [first] = members;
  if (first === undefined) return [];
  const { fit, fastening } = first;
  const length = (mm: number) => formatLength(mm, fit.unit);
  const { sheets: sheet } = words;
  const start = fit.rules.startLow.value;
  return [
    ...sharedOverhangs(members).map((edge) =>
      sheet.overhang(words.capitalEdges[edge], length(fit.overhang[edge])),
    ),
    ...(fastening === null ? [sheet.noScrew] : screwNumbers(fastening, words)),
    start > 0 ? sheet.adjuster(length(start)) : sheet.adjusterMiddle,
  ];
}

function screwNumbers(fastening: Fastening, words: PaperWords): readonly string[] {
  const { fit, places, screw, holes } = fastening;
  const { sheets: sheet } = words;
  if (screw === null || places.length === 0) return [sheet.noScrew];
  const leaning = places.filter(({ angle, index }) => angle !== 0 && index === 0);
  const bit = (mm: number) => formatLength(mm, fit.unit);
  return [
    sheet.screw(screw.name, places.length),
    ...(holes === null
      ? []
      : [
          sheet.pilot(bit(holes.pilotDiameter)),
          ...(holes.clearanceDiameter > 0 ? [sheet.clearance(bit(holes.clearanceDiameter))] : []),
          sheet.depth(formatLength(bitLength(fastening, holes), fit.unit)),
        ]),
    leaning.length === 0
      ? sheet.straight
      : sheet.angles(
          sheet.list(
            leaning.map(({ corner, angle }) => sheet.angle(cornerText(corner, words), roundTo(angle, 1))),
          ),
        ),
    ...placeLines(fastening, words),
  ];
}

/**
 * How much of the bit stands out past its stop, from the inside of the box front along the screw, mm: that of
 * the screw that needs least, rounded down, as a bit that is set deeper could come through the face.
 */
export function bitLength({ fit, places }: Fastening, holes: Holes): number {
  const least = Math.min(...places.map((place) => depthStop(place, holes, fit, 0)));
  const step = STEP[fit.unit];
  return Math.floor(least / step + 1e-6) * step;
}

/** mm. What is set or marked by hand is told to 1/32 in or 0.5 mm. */
const STEP = { in: INCH / 32, mm: 0.5 } as const;

/** Where the corner screws are; corners of one place together. */
function placeLines({ fit, places }: Fastening, words: PaperWords): readonly string[] {
  const { sheets: sheet } = words;
  const at = (mm: number) => placeText(mm, fit.unit);
  const groups = groupBy(
    places.filter(({ index }) => index === 0),
    ({ fromSide, fromEnd }) => `${at(fromSide)} ${at(fromEnd)}`,
  );
  return [...groups.values()].flatMap((group): readonly string[] => {
    const [first] = group;
    if (first === undefined) return [];
    const names =
      group.length === 4
        ? sheet.allCorners
        : sheet.list(group.map(({ corner }) => cornerText(corner, words)));
    return [sheet.place(names, at(first.fromSide), at(first.fromEnd))];
  });
}

const placeText = (mm: number, unit: LengthUnit): string =>
  formatLength(Math.round(mm / STEP[unit]) * STEP[unit], unit);
