import { parseLength } from '../units/parse-length.ts';
import { comparable } from './cabinets.ts';
import { parseEdgeCondition } from './edge-condition.ts';
import { parseFrontConstruction } from './front-construction.ts';
import { didYouMean } from './suggest.ts';
import type { OrderTerms } from './raw-row.ts';
import type { EdgeCondition, FrontConstruction, Position } from './types.ts';

/** What a cell says, or its finding's code and a clause on what is wrong and what would be accepted. */
export type Cell<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: string; readonly reason: string };

/** One kind of cell; the text is trimmed and not empty. */
export type CellReader<T> = (text: string, terms: OrderTerms) => Cell<T>;

/** More alike than any shop builds: a larger number is a slip of the hand. */
const LARGEST_QTY = 10_000;

/** More side by side than any cabinet has. */
const LARGEST_COLUMN = 99;

const POSITIONS: readonly Position[] = ['top', 'middle', 'bottom'];

const read = <T>(value: T): Cell<T> => ({ ok: true, value });
const refuse = (code: string, reason: string): Cell<never> => ({ ok: false, code, reason });

export const readLengthCell: CellReader<number> = (text, { unit }) => {
  const length = parseLength(text, { unit });
  return length.ok ? read(length.mm) : refuse('order/length', length.reason);
};

export const readEdgeCell: CellReader<EdgeCondition> = (text, { unit }) => {
  const edge = parseEdgeCondition(text, { unit });
  return edge.ok ? read(edge.condition) : refuse('order/edge', edge.reason);
};

const wholeNumber =
  (code: string, largest: number): CellReader<number> =>
  (text) => {
    const number = /^\d{1,9}$/.test(text) ? Number(text) : 0;
    return number >= 1 && number <= largest
      ? read(number)
      : refuse(code, `write a whole number from 1 to ${largest}`);
  };

export const readQtyCell = wholeNumber('order/qty', LARGEST_QTY);

export const readColumnCell = wholeNumber('order/column', LARGEST_COLUMN);

export const readPositionCell: CellReader<Position> = (text) => {
  const position = POSITIONS.find((known) => known === text.toLowerCase());
  return position === undefined ? refuse('order/position', 'write top, middle or bottom') : read(position);
};

/** A name of a list, in any case; gives the list's own spelling. */
const named =
  (code: string, what: string, known: (terms: OrderTerms) => readonly string[]): CellReader<string> =>
  (text, terms) => {
    const names = known(terms);
    const name = names.find((one) => comparable(one) === comparable(text));
    if (name !== undefined) return read(name);
    if (names.length === 0) return refuse(code, `the shop standard has no ${what}; leave this empty`);
    return refuse(
      code,
      `the shop standard has no such ${what}; write ${names.join(', ')}${didYouMean(text, names)}`,
    );
  };

export const readStyleCell = named('order/style', 'style', ({ styles }) => styles);

export const readCabinetKindCell = named(
  'order/cabinet-kind',
  'cabinet kind',
  ({ cabinetKinds }) => cabinetKinds,
);

export const readSpeciesCell = named('order/species', 'species', ({ species }) => species);

export const readFrontCell: CellReader<FrontConstruction> = (text, { unit }) => {
  const front = parseFrontConstruction(text, { unit });
  return front.ok ? read(front.front) : refuse('order/front', front.reason);
};
