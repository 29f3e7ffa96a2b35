import { formatLength } from '../../../units/format-length.ts';
import type { PaperWords } from '../words/en.ts';
import { sideWords } from './numbers.ts';
import { membersOf, type PaperSetup, type SetupMember } from './types.ts';

/** mm. A gap with less than this left of it counts as touching; common practice, no source. */
const CLOSE = 0.5;

/** Hanging the drawer, and what its adjusters must put right. */
export function hangSteps(setup: PaperSetup, words: PaperWords): readonly string[] {
  const members = membersOf(setup);
  const [first] = members;
  if (first === undefined) return [];
  const { sheets: sheet } = words;
  const { unit, rules } = first.fit;
  const start = rules.startLow.value;
  const length = (mm: number) => formatLength(Math.abs(mm), unit);
  const low = members.some(touches) ? sheet.hangTouching : sheet.hang;
  return [
    start > 0 ? low(length(start)) : start < 0 ? sheet.hangHigh(length(start)) : sheet.hangMiddle,
    ...(first.sideways === 0
      ? []
      : [sheet.hangSide(length(first.sideways), sideWords(first.sideways, words))]),
  ];
}

/** Whether a front that starts low would meet the rail or the front below it when the drawer is first closed. */
const touches = ({ fit: { gaps, rules } }: SetupMember): boolean =>
  gaps.bottom !== null && rules.startLow.value > 0 && rules.startLow.value >= gaps.bottom - CLOSE;
