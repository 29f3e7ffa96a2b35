import { placeName } from '../../../fastening/place-name.ts';
import type { Fastening } from '../../../fastening/types.ts';
import { worstMiss } from '../../../fastening/worst-miss.ts';
import { drawerName } from '../../../fit/drawer-name.ts';
import { formatLength } from '../../../units/format-length.ts';
import { roundTo } from '../../../units/tolerances.ts';
import { bitText } from '../bit-text.ts';
import type { PaperWords } from '../words/en.ts';
import { placeText } from './numbers.ts';
import { membersOf, type PaperSetup, type SetupVariant } from './types.ts';

/** Whether any screw is chosen: a setup has one sort, or none at all. */
export const isScrewed = (setup: PaperSetup): boolean =>
  membersOf(setup).some(({ fastening }) => (fastening?.places.length ?? 0) > 0);

/** Through guides where the table names one, and by its numbers where it does not; then the box front is opened. */
export function drillSteps(setup: PaperSetup, words: PaperWords): readonly string[] {
  const { sheets: sheet } = words;
  const guides = setup.variants.some(({ aids }) => aids.some(({ corner }) => corner !== null));
  const free = setup.variants.flatMap(byHand);
  return [
    ...(guides ? [sheet.guides] : []),
    ...(free.length > 0 ? [guides ? sheet.drillOthers : sheet.drillMarked] : []),
    ...(free.some(({ angle }) => angle > 0) ? [sheet.leanByHand] : []),
    ...clearSteps(setup, guides, words),
  ];
}

/** What to say in place of drilling where no screw fits: why, for the first drawer of which it is known. */
export function stopStep(setup: PaperSetup, words: PaperWords): string {
  const reasons = membersOf(setup).map(({ fastening }) =>
    fastening === null ? null : reasonOf(fastening, words),
  );
  return words.sheets.stop(reasons.find((reason) => reason !== null) ?? []);
}

/** The place that is missed by most, and the first cure of it. */
function reasonOf({ fit, impossible }: Fastening, { sheets }: PaperWords): readonly string[] | null {
  const worst = worstMiss(impossible);
  const margin = worst?.margins[0];
  if (worst === undefined || margin === undefined) return null;
  return [
    sheets.reason(drawerName(fit.drawer), placeName(worst), worst.screw.name, margin.against, {
      is: formatLength(Math.abs(margin.is), fit.unit),
      least: formatLength(margin.least, fit.unit),
      isPast: margin.is < 0,
    }),
    ...worst.cures.slice(0, 1),
  ];
}

/**
 * The thread must turn freely in the box front, or it holds the two apart. The pilots are there by then, so the
 * larger bit follows them while the clamp still holds both; along a lean its way through is longer.
 */
function clearSteps(setup: PaperSetup, guides: boolean, words: PaperWords): readonly string[] {
  const { sheets: sheet } = words;
  const members = membersOf(setup);
  const first = members.find(({ fastening }) => (fastening?.holes?.clearanceDiameter ?? 0) > 0);
  const holes = first?.fastening?.holes;
  if (first === undefined || holes === undefined || holes === null) return [];
  const { boxFront, unit } = first.fit;
  const angles = members.flatMap(
    ({ fastening }) => fastening?.places.map(({ angle }) => roundTo(angle, 1)) ?? [],
  );
  const leaning = [...new Set(angles)].filter((angle) => angle > 0).toSorted((a, b) => a - b);
  const deep = (angle: number) => placeText(boxFront / Math.cos((angle * Math.PI) / 180), unit);
  const straight = deep(0);
  const deeper = leaning.filter((angle) => deep(angle) !== straight);
  const step = sheet.clear(
    bitText(holes.clearanceDiameter, unit, words),
    straight,
    leaning.length > 0,
    deeper.map((angle) => sheet.clearLeaning(angle, deep(angle))),
  );
  return [guides ? `${sheet.takeGuidesOut} ${step}` : step];
}

/** The screws of a variant that no bore of a guide leads. */
function byHand({ aids, members: [first] }: SetupVariant) {
  const places = first?.fastening?.places ?? [];
  return places.filter(
    ({ corner, index }) =>
      !aids.some(
        (aid) =>
          aid.corner?.end === corner.end && aid.corner.hand === corner.hand && aid.screws.includes(index),
      ),
  );
}
