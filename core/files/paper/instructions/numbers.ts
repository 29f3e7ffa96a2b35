import { depthStop } from '../../../fastening/depth-stop.ts';
import type { Fastening, Holes } from '../../../fastening/types.ts';
import type { LengthUnit } from '../../../order/types.ts';
import { INCH } from '../../../units/inch-fraction.ts';
import { formatLength } from '../../../units/format-length.ts';
import { bitText } from '../bit-text.ts';
import type { PaperWords } from '../words/en.ts';
import { sharedOverhangs } from './shared-overhangs.ts';
import { membersOf, type PaperSetup } from './types.ts';

/** The numbers of a setup in the shop's unit: overhangs, screws, bit, depth stop, adjusters. */
export function setupNumbers(setup: PaperSetup, words: PaperWords): readonly string[] {
  const members = membersOf(setup);
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
    start > 0
      ? sheet.adjuster(length(start))
      : start < 0
        ? sheet.adjusterHigh(length(-start))
        : sheet.adjusterMiddle,
    ...(first.sideways === 0
      ? []
      : [sheet.adjusterSide(length(Math.abs(first.sideways)), sideWords(first.sideways, words))]),
  ];
}

/** Which way the front must go. */
export const sideWords = (sideways: number, { edges }: PaperWords): string =>
  sideways > 0 ? edges.right : edges.left;

function screwNumbers(fastening: Fastening, words: PaperWords): readonly string[] {
  const { fit, places, screw, holes } = fastening;
  const { sheets: sheet } = words;
  if (screw === null || places.length === 0) return [sheet.noScrew];
  const bit = (mm: number) => bitText(mm, fit.unit, words);
  return [
    sheet.screw(screw.name),
    ...(holes === null
      ? []
      : [
          sheet.pilot(bit(holes.pilotDiameter)),
          ...(holes.clearanceDiameter > 0 ? [sheet.clearance(bit(holes.clearanceDiameter))] : []),
          sheet.depth(formatLength(bitLength(fastening, holes), fit.unit)),
        ]),
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

/** The place of a screw, as it is marked by hand. */
export const placeText = (mm: number, unit: LengthUnit): string =>
  formatLength(Math.round(mm / STEP[unit]) * STEP[unit], unit);
