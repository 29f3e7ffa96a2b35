import { parseLength } from '../units/parse-length.ts';
import type { Refusal } from '../units/parse-number.ts';
import { plainLengthText } from '../units/plain-length-text.ts';
import { writeLength } from '../units/write-length.ts';
import { defined } from './defined.ts';
import { readFrontClauses, type FrontClauses } from './front-clauses.ts';
import { quoteText } from './quote-text.ts';
import type { FrontConstruction, LengthUnit } from './types.ts';

export type FrontConstructionResult = { readonly ok: true; readonly front: FrontConstruction } | Refusal;

/**
 * Reads how a front is made; bare numbers are in `unit`.
 *
 * @example parseFrontConstruction('five-piece 2-1/4 rails 2 cope', { unit: 'in' })
 */
export function parseFrontConstruction(
  text: string,
  { unit }: { readonly unit: LengthUnit },
): FrontConstructionResult {
  const clauses = readFrontClauses(plainLengthText(text));
  if (!clauses.ok) return clauses;
  const reasons: string[] = [];
  const length = (what: string, written: string): number => {
    const read = parseLength(written, { unit });
    if (read.ok) return read.mm;
    reasons.push(
      `${what} ${written === '' ? 'is missing' : `${quoteText(written)} is refused`}: ${read.reason}`,
    );
    return 0;
  };
  const front = readFront(clauses, length);
  const [reason] = reasons;
  return reason === undefined ? { ok: true, front } : { ok: false, reason };
}

function readFront(
  { kind, head, rails, thinnest, joint }: FrontClauses,
  length: (what: string, text: string) => number,
): FrontConstruction {
  const profile = thinnest === undefined ? {} : { thinnest: length('the thinnest wood', thinnest) };
  if (kind === 'slab') return { kind, ...profile };
  return {
    kind,
    memberWidth: length('the width of its frame', head),
    ...(rails === undefined ? {} : { railWidth: length('the width of its rails', rails) }),
    ...defined({ joint }),
    ...profile,
  };
}

/** Text that `parseFrontConstruction` reads back as the same: `five-piece 2-1/4 in rails 2 in cope`. */
export function writeFrontConstruction(front: FrontConstruction, unit: LengthUnit): string {
  const { kind, thinnest } = front;
  const length = (word: string, mm: number | undefined): readonly string[] =>
    mm === undefined ? [] : [word, writeLength(mm, unit)];
  const frame =
    kind === 'slab'
      ? []
      : [writeLength(front.memberWidth, unit), ...length('rails', front.railWidth), front.joint ?? []].flat();
  return [kind, ...frame, ...length('thinnest', thinnest)].join(' ');
}
