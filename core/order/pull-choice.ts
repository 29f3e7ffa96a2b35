import { parseLength } from '../units/parse-length.ts';
import type { Refusal } from '../units/parse-number.ts';
import { plainLengthText } from '../units/plain-length-text.ts';
import { comparable } from './cabinets.ts';
import { quoteText } from './quote-text.ts';
import type { PullSort } from './raw-row.ts';
import { didYouMean } from './suggest.ts';
import type { PullChoice } from './types.ts';

export type PullChoiceResult = { readonly ok: true; readonly choice: PullChoice } | Refusal;

/** The first word, how its holes lie, and a remark behind a comma that is no decimal one, or a semicolon. */
const PARTS = /^([^\s,;]*)((?:[^,;]|,(?=\d))*)/u;

/**
 * What a pull cell means: a sort of the shop standard, then the distance of its holes and how many stand on
 * one front, both where the order says so, and any remark behind a comma.
 *
 * @example parsePullChoice('bar 128 mm x2, brushed', pulls) // { sort: 'bar', centers: 128, count: 2 }
 */
export function parsePullChoice(text: string, pulls: Readonly<Record<string, PullSort>>): PullChoiceResult {
  const [, word = '', rest = ''] = PARTS.exec(text) ?? [];
  const sorts = Object.keys(pulls);
  const sort = sorts.find((one) => comparable(one) === comparable(word));
  const rule = sort === undefined ? undefined : pulls[sort];
  if (sort === undefined || rule === undefined) {
    if (sorts.length === 0) return refuse('the shop standard has no pulls; leave this empty');
    return refuse(
      `it begins with no sort of pull that the shop standard has; begin it with ${sorts.join(', ')}${didYouMean(word, sorts)}`,
    );
  }
  const [, distance = '', times] = /^(.*?)(?:(?<=^| )x ?(\d+))?$/i.exec(plainLengthText(rest)) ?? [];
  if (times !== undefined && times !== '1' && times !== '2') {
    return refuse(`a front has one or two pulls, not ${times}; write x1 or x2`);
  }
  const count = times === undefined ? {} : { count: times === '1' ? (1 as const) : (2 as const) };
  const written = distance.trim();
  if (written === '') return { ok: true, choice: { sort, ...count } };
  if (rule.holes === 1) {
    return refuse(
      `a ${sort} has one hole and no distance ${quoteText(written)}; write ${sort}, and a remark behind a comma`,
    );
  }
  const centers = readCenters(written);
  return centers.ok ? { ok: true, choice: { sort, centers: centers.mm, ...count } } : centers;
}

/** Pulls are sold by millimetres and by inches in any shop, so a bare number means nothing. */
function readCenters(text: string): { readonly ok: true; readonly mm: number } | Refusal {
  const inches = parseLength(text, { unit: 'in' });
  if (!inches.ok) {
    return refuse(`the distance of its holes ${quoteText(text)} is refused: ${inches.reason}`);
  }
  const metric = parseLength(text, { unit: 'mm' });
  return metric.ok && metric.mm === inches.mm
    ? inches
    : refuse(`the distance of its holes ${quoteText(text)} has no unit; write one such as 96 mm or 3 in`);
}

const refuse = (reason: string): Refusal => ({ ok: false, reason });
