import type { Refusal } from '../units/parse-number.ts';
import { quoteText } from './quote-text.ts';
import { didYouMean } from './suggest.ts';
import type { FrontConstruction } from './types.ts';

type FrontKind = FrontConstruction['kind'];

/** The forms of a front's construction; the clauses in brackets come in any order. */
const FRONT_FORMS: Readonly<Record<FrontKind, string>> = {
  slab: 'slab [thinnest T]',
  'five-piece': 'five-piece W [rails R] [cope] [mitre] [thinnest T]',
};

type Clause = 'rails' | 'thinnest' | 'cope' | 'mitre';

/** A front's construction cut at its words; the lengths are still text. */
export interface FrontClauses extends Readonly<Partial<Record<'rails' | 'thinnest', string>>> {
  readonly ok: true;
  readonly kind: FrontKind;
  /** What stands before the clauses: the width of the frame. */
  readonly head: string;
  readonly joint?: 'cope' | 'mitre';
}

const ALLOWED: Readonly<Record<FrontKind, readonly Clause[]>> = {
  slab: ['thinnest'],
  'five-piece': ['rails', 'thinnest', 'cope', 'mitre'],
};

const refuse = (reason: string): Refusal => ({ ok: false, reason });

/**
 * Cuts a front's construction in plain characters at its words, in any case.
 *
 * @example readFrontClauses('slab thinnest 5/8') // { kind: 'slab', head: '', thinnest: '5/8' }
 */
export function readFrontClauses(plain: string): FrontClauses | Refusal {
  const [, kindText = '', rest = ''] = /^(slab|(?:five|5)[\s_-]?piece)(?![\p{L}])(.*)$/iu.exec(plain) ?? [];
  if (kindText === '') {
    const [word = ''] = plain.split(' ');
    return refuse(
      `write slab, or five-piece and the width of its frame, such as five-piece 2-1/4 in${didYouMean(word, ['slab', 'five-piece'])}`,
    );
  }
  const kind: FrontKind = /^slab$/i.test(kindText) ? 'slab' : 'five-piece';
  const form = FRONT_FORMS[kind];
  const [head = '', ...cuts] = rest
    .split(/(?<=^| )(rails?|thinnest|cope|mit(?:re|er))(?= |$)/i)
    .map((text) => text.trim());
  if (kind === 'slab' && head !== '') return refuse(`after slab stands ${quoteText(head)}; write ${form}`);
  if (kind === 'five-piece' && head === '') {
    return refuse('the width of its frame is missing; write one, such as five-piece 2-1/4 in');
  }
  const found: Partial<Record<Clause, string>> = {};
  for (let index = 0; index < cuts.length; index += 2) {
    const clause = clauseOf(cuts[index] ?? '');
    const text = cuts[index + 1] ?? '';
    if (!ALLOWED[kind].includes(clause)) return refuse(`${kind} takes no ${clause}; write ${form}`);
    if (found[clause] !== undefined) return refuse(`${clause} stands twice; write ${form}`);
    if (text !== '' && (clause === 'cope' || clause === 'mitre')) {
      return refuse(`after ${clause} stands ${quoteText(text)}; write ${form}`);
    }
    found[clause] = text;
  }
  const { rails, thinnest, cope, mitre } = found;
  if (cope !== undefined && mitre !== undefined) {
    return refuse('its corners are coped or mitred, not both; keep one of cope and mitre');
  }
  const joint =
    cope === undefined
      ? mitre === undefined
        ? {}
        : { joint: 'mitre' as const }
      : { joint: 'cope' as const };
  return {
    ok: true,
    kind,
    head,
    ...(rails === undefined ? {} : { rails }),
    ...(thinnest === undefined ? {} : { thinnest }),
    ...joint,
  };
}

function clauseOf(word: string): Clause {
  const lower = word.toLowerCase();
  if (lower === 'thinnest' || lower === 'cope') return lower;
  return lower.startsWith('rail') ? 'rails' : 'mitre';
}
