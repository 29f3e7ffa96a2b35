import { parseLength, type LengthOptions } from '../units/parse-length.ts';
import type { Refusal } from '../units/parse-number.ts';
import { plainLengthText } from '../units/plain-length-text.ts';
import { writeLength } from '../units/write-length.ts';
import { EDGE_FORMS, readEdgeClauses, type EdgeClauses } from './edge-clauses.ts';
import { quoteText } from './quote-text.ts';
import { didYouMean } from './suggest.ts';
import { MEMBER_NAMES, type EdgeCondition, type LengthUnit, type MemberName } from './types.ts';

export type EdgeConditionResult = { readonly ok: true; readonly condition: EdgeCondition } | Refusal;

/**
 * Reads what an edge of a front meets; bare numbers are in `unit`.
 *
 * @example parseEdgeCondition('share mid-rail gap 1/8 neighbor 1/8', { unit: 'in' })
 */
export function parseEdgeCondition(
  text: string,
  options: { readonly unit: LengthUnit },
): EdgeConditionResult {
  const clauses = readEdgeClauses(plainLengthText(text));
  if (!clauses.ok) return clauses;
  const reasons: string[] = [];
  const condition = readCondition(clauses, options.unit, reasons);
  const [reason] = reasons;
  return reason === undefined ? { ok: true, condition } : { ok: false, reason };
}

/** Text that `parseEdgeCondition` reads back as the same condition: `cover bottom-rail reveal 1/16 in`. */
export function writeEdgeCondition(condition: EdgeCondition, unit: LengthUnit): string {
  const length = (mm: number): string => writeLength(mm, unit);
  const member = (name: number | MemberName): string => (typeof name === 'number' ? length(name) : name);
  switch (condition.kind) {
    case 'inset':
      return `inset ${length(condition.gap)}`;
    case 'lap':
      return `lap ${length(condition.overlay)}`;
    case 'cover':
      return `cover ${member(condition.member)} reveal ${length(condition.reveal)}`;
    default: {
      const even = `share ${member(condition.member)} gap ${length(condition.gap)}`;
      return condition.neighborLap === undefined ? even : `${even} neighbor ${length(condition.neighborLap)}`;
    }
  }
}

function readCondition(clauses: EdgeClauses, unit: LengthUnit, reasons: string[]): EdgeCondition {
  const length = (
    what: string,
    text: string,
    options: Omit<LengthOptions, 'unit'> = { zero: true },
  ): number => {
    const read = parseLength(text, { unit, ...options });
    if (read.ok) return read.mm;
    reasons.push(`${what} ${text === '' ? 'is missing' : `${quoteText(text)} is refused`}: ${read.reason}`);
    return 0;
  };
  const { keyword, head, reveal, gap, neighbor } = clauses;
  switch (keyword) {
    case 'inset':
      return { kind: 'inset', gap: length('the gap', head) };
    case 'lap':
      return { kind: 'lap', overlay: length('the overlay', head) };
    case 'cover': {
      const member = readMember(head, (text) => length('the width', text, {}), reasons);
      const shown = reveal === undefined ? 0 : length('the reveal', reveal);
      if (reasons.length === 0 && typeof member === 'number' && shown > member) {
        reasons.push(
          'the reveal is wider than the member; write a reveal of the width at most, or inset GAP',
        );
      }
      return { kind: 'cover', member, reveal: shown };
    }
    default: {
      // A width of 0 is a joint without a rail: frameless fronts one above the other.
      const member = readMember(head, (text) => length('the width', text), reasons);
      const between = gap === undefined ? 0 : length('the gap', gap);
      if (gap === undefined) reasons.push(`share needs a gap; write ${EDGE_FORMS.share}`);
      if (neighbor === undefined) return { kind: 'share', member, gap: between };
      // A neighbour that stops short of the member laps it by less than nothing.
      const neighborLap = length("the neighbor's lap", neighbor, { sign: 'any' });
      return { kind: 'share', member, gap: between, neighborLap };
    }
  }
}

function readMember(text: string, length: (text: string) => number, reasons: string[]): number | MemberName {
  const word = text.toLowerCase().replace(/[ _]+/g, '-');
  const name = MEMBER_NAMES.find((member) => member === word);
  if (name !== undefined) return name;
  if (!/^\p{L}/u.test(text)) return length(text);
  reasons.push(
    `${quoteText(text)} is no member; write a width or one of ${MEMBER_NAMES.join(', ')}${didYouMean(word, MEMBER_NAMES)}`,
  );
  return 0;
}
