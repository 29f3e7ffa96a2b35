import type { Refusal } from '../units/parse-number.ts';
import { didYouMean } from './suggest.ts';

/** The forms of an edge condition; W is a width or a member such as `mid-rail`. */
export const EDGE_FORMS = {
  inset: 'inset GAP',
  lap: 'lap OVERLAY',
  cover: 'cover W [reveal R]',
  share: 'share W gap G [neighbor N]',
} as const;

export type EdgeKeyword = keyof typeof EDGE_FORMS;

type Clause = 'reveal' | 'gap' | 'neighbor';

/** An edge condition cut at its words; the lengths are still text. */
export interface EdgeClauses extends Readonly<Partial<Record<Clause, string>>> {
  readonly ok: true;
  readonly keyword: EdgeKeyword;
  readonly head: string;
}

const KEYWORDS: readonly EdgeKeyword[] = ['inset', 'lap', 'cover', 'share'];

const ALLOWED: Readonly<Record<EdgeKeyword, readonly Clause[]>> = {
  inset: [],
  lap: [],
  cover: ['reveal'],
  share: ['gap', 'neighbor'],
};

const refuse = (reason: string): Refusal => ({ ok: false, reason });

/**
 * Cuts an edge condition in plain characters at its words, in any case.
 *
 * @example readEdgeClauses('cover 1-1/2 reveal 1/16') // { keyword: 'cover', head: '1-1/2', reveal: '1/16' }
 */
export function readEdgeClauses(plain: string): EdgeClauses | Refusal {
  const [, word = '', rest = ''] = /^(\p{L}*) ?(.*)$/u.exec(plain) ?? [];
  const keyword = KEYWORDS.find((known) => known === word.toLowerCase());
  if (keyword === undefined) {
    const forms = KEYWORDS.map((known) => EDGE_FORMS[known]).join(', ');
    return refuse(
      `an edge begins with inset, lap, cover or share; write one of: ${forms}${didYouMean(word, KEYWORDS)}`,
    );
  }
  const [head = '', ...cuts] = rest
    .split(/(?:^| )(reveal|gap|neighbou?r)(?= |$)/i)
    .map((text) => text.trim());
  const found: Partial<Record<Clause, string>> = {};
  for (let index = 0; index < cuts.length; index += 2) {
    const clause = clauseOf(cuts[index] ?? '');
    if (!ALLOWED[keyword].includes(clause))
      return refuse(`${keyword} takes no ${clause}; write ${EDGE_FORMS[keyword]}`);
    if (found[clause] !== undefined) return refuse(`${clause} stands twice; write ${EDGE_FORMS[keyword]}`);
    found[clause] = cuts[index + 1] ?? '';
  }
  return { ok: true, keyword, head, ...found };
}

function clauseOf(word: string): Clause {
  const lower = word.toLowerCase();
  return lower === 'reveal' || lower === 'gap' ? lower : 'neighbor';
}
