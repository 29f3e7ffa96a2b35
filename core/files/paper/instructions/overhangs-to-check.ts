import { EDGES } from '../../../order/types.ts';
import { formatLength } from '../../../units/format-length.ts';
import type { PaperWords } from '../words/en.ts';
import { sharedOverhangs } from './shared-overhangs.ts';
import { membersOf, type PaperSetup } from './types.ts';

/** The overhangs that one must find on every drawer of a setup, in a row. */
export function overhangsToCheck(setup: PaperSetup, words: PaperWords): string {
  const members = membersOf(setup);
  const [first] = members;
  if (first === undefined) return '';
  const { overhang, unit } = first.fit;
  const shared = sharedOverhangs(members);
  return [
    ...shared.map((edge) => `${words.edges[edge]} ${formatLength(overhang[edge], unit)}`),
    ...(shared.length === EDGES.length ? [] : [words.sheets.othersInTable]),
  ].join(', ');
}
