import { templateGeometry } from '../template/template-geometry.ts';
import type { PaperWords } from '../words/en.ts';
import { membersOf, type PaperSetup, type SetupMember } from './types.ts';

/**
 * The pull's holes go right through the front, into a board below it, before the box is in the way: through a
 * template where the plan has one, else where the paper template shows them.
 */
export function pullSteps(setup: PaperSetup, { or, sheets }: PaperWords): readonly string[] {
  const { variants } = setup;
  const pulls = new Set(
    variants.flatMap(({ aids }) => aids.filter(({ corner }) => corner === null).map(({ id }) => id)),
  );
  const all = variants.every(({ aids }) => aids.some(({ corner }) => corner === null));
  const paper = variants.some(
    ({ aids, members }) => aids.every(({ corner }) => corner !== null) && members.some(isOnPaper),
  );
  const onPaper = isSetOnPaper(setup) ? sheets.pullsPricked : sheets.pullsOnPaper(pulls.size > 0);
  return [
    ...(pulls.size > 0 ? [(all ? sheets.pulls : sheets.somePulls)([...pulls].join(or))] : []),
    ...(paper ? [onPaper] : []),
  ];
}

/** Whether the box is set to marks that are pricked through the paper template. */
export const isSetOnPaper = (setup: PaperSetup): boolean =>
  setup.jigs.length === 0 && membersOf(setup)[0]?.template !== null;

const isOnPaper = ({ fastening, template }: SetupMember): boolean =>
  template !== null && (fastening?.pullHoles.centers.length ?? 0) > 0;

/** A hole that the box front covers must go on through it, once it is there. */
export const pullsInBox = (setup: PaperSetup, { sheets }: PaperWords): readonly string[] =>
  membersOf(setup).some(isInBox) ? [sheets.pullsInBox] : [];

function isInBox({ fit, fastening }: SetupMember): boolean {
  if (fastening === null) return false;
  const { x, y, w, h } = templateGeometry(fit).box;
  const { centers, diameter } = fastening.pullHoles;
  const r = diameter / 2;
  return centers.some((at) => at.x > x - r && at.x < x + w + r && at.y > y - r && at.y < y + h + r);
}
