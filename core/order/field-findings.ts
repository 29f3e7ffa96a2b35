import type { z } from 'zod';
import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { printable, quoteText, shownText } from './quote-text.ts';

/** The file of a JSON document, and the path of fields down to it when it stands inside another. */
export interface DocumentPlace {
  readonly file: string;
  readonly within?: readonly string[];
}

/**
 * What a schema found wrong with a JSON document, each with the path of its field; an item of a list goes
 * by its name where it has one: `styles.inset.edges.left`.
 */
export function fieldFindings(
  issues: readonly z.core.$ZodIssue[],
  json: unknown,
  code: string,
  { file, within = [] }: DocumentPlace,
): readonly Finding[] {
  const told = issues.slice(0, MOST_TOLD).map((issue) => {
    const field = [...within, ...pathWords(issue.path, json)].join('.');
    const where = field === '' ? 'The document' : `Field ${field}`;
    return error(
      code,
      `${where}: ${printable(whatIsWrong(issue, json))}.`,
      field === '' ? { file } : { file, field },
    );
  });
  if (issues.length <= MOST_TOLD) return told;
  const message = `The document has ${issues.length - MOST_TOLD} faults more; mend these first.`;
  return [...told, error(code, message, { file })];
}

/** Faults of one document that are worth telling. */
const MOST_TOLD = 1000;

/** A path through a JSON document: a list's item goes by its name, or by its index from 0. */
function pathWords(path: readonly PropertyKey[], json: unknown): readonly string[] {
  const words: string[] = [];
  let here: unknown = json;
  for (const key of path) {
    here = child(here, key);
    const name = typeof key === 'number' ? child(here, 'name') : undefined;
    words.push(shownText(typeof name === 'string' && name !== '' ? name : String(key)));
  }
  return words;
}

const child = (value: unknown, key: PropertyKey): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? Reflect.get(value, key)
    : undefined;

function whatIsWrong(issue: z.core.$ZodIssue, json: unknown): string {
  let read = json;
  for (const key of issue.path) read = child(read, key);
  switch (issue.code) {
    case 'invalid_type':
      return read === undefined
        ? `it is missing; write ${kind(issue.expected)}`
        : `it is ${shown(read)}; write ${kind(issue.expected)}`;
    case 'invalid_value': {
      const values = issue.values.map((value) => JSON.stringify(value));
      const accepted = [values.slice(0, -1).join(', '), ...values.slice(-1)]
        .filter((text) => text !== '')
        .join(' or ');
      return read === undefined
        ? `it is missing; write ${accepted}`
        : `it is ${shown(read)}; write ${accepted}`;
    }
    case 'unrecognized_keys':
      // Our own schemas have said which fields they take.
      return issue.message.startsWith('unknown') ? issue.message : `unknown ${unknownKeys(issue.keys)}`;
    case 'invalid_key':
      return 'the name is empty; write a name';
    default:
      return issue.message;
  }
}

/** Keys of a document that nobody may have meant to be read, as many as a message can hold. */
export const unknownKeys = (keys: readonly string[]): string =>
  [...keys.slice(0, MOST_KEYS).map(quoteText), ...(keys.length > MOST_KEYS ? ['and more'] : [])].join(', ');

const MOST_KEYS = 8;

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text in quotation marks',
  object: 'an object in braces',
  record: 'an object in braces',
  array: 'a list in brackets',
  number: 'a number',
  int: 'a whole number',
};

const kind = (expected: string): string => KINDS[expected] ?? expected;

function shown(value: unknown): string {
  if (typeof value === 'string') return quoteText(value);
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}
