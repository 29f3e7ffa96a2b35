import type { Finding } from '../../findings/finding.ts';
import { comparable } from '../../order/cabinets.ts';
import { quoteText } from '../../order/quote-text.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** Names of one list differ, and what must be there is there. */
export function checkNames(standard: ShopStandard, fault: Fault): readonly Finding[] {
  const lists = {
    styles: standard.styles.map(({ name }) => name),
    slides: Object.keys(standard.slides),
    cabinetKinds: Object.keys(standard.cabinetKinds),
    species: Object.keys(standard.species),
    'fastening.stock': standard.fastening.stock.map(({ name }) => name),
    pulls: Object.keys(standard.pulls),
  };
  const findings = Object.entries(lists).flatMap(([list, names]) => checkList(list, names, fault));
  if (standard.styles.length > 0) return findings;
  return [...findings, fault('no-style', 'styles', 'the list is empty; write one style at least')];
}

const checkList = (list: string, names: readonly string[], fault: Fault): readonly Finding[] =>
  names.flatMap((name, index) => {
    const first = names.findIndex((other) => comparable(other) === comparable(name));
    const field = `${list}.${name}`;
    if (first < index) {
      const same = quoteText(names[first] ?? '');
      return [fault('name-twice', field, `${same} is the same name; names differ in more than their case`)];
    }
    return name === name.trim()
      ? []
      : [fault('name-blanks', field, 'the name begins or ends with a blank; take it out')];
  });
