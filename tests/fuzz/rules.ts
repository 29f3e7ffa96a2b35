import { isDeepStrictEqual } from 'node:util';
import type { Finding, Outcome } from '../../core/findings/finding.ts';
import type { Breaches } from './fuzzed.ts';

/** Control characters and halves of surrogate pairs, which no message repeats as they are. */
const RAW = /[\p{Cc}\p{Cs}]/u;

/** Words that stand in a message only when it was made of something that is not there. */
const HOLLOW = /\bundefined\b|\[object |\bNaN\b/;

/** Characters. A message is read by people. */
const LONGEST = 1500;

/** A message is a whole sentence in plain characters. `given`: what was read, which may hold hollow words itself. */
function sentenceBreaches(message: string, given: string): Breaches {
  return [
    ...(/^[\p{Lu}“].*[.?]$/su.test(message) ? [] : ['no sentence']),
    ...(RAW.test(message) ? ['unprintable characters'] : []),
    ...(HOLLOW.test(message) && !HOLLOW.test(given) ? ['hollow words'] : []),
    ...(message.length > LONGEST ? [`${message.length} characters`] : []),
  ].map((what) => `${what} in the message: ${message.slice(0, 300)}`);
}

/** Findings are sentences that say where. */
export const findingBreaches = (findings: readonly Finding[], given: string, file?: string): Breaches =>
  findings.flatMap(({ code, message, at }) => [
    ...sentenceBreaches(message, given),
    ...(/^[a-z]+\/[a-z0-9-]+$/.test(code) ? [] : [`the code ${code}`]),
    ...(file === undefined || at.file === file ? [] : [`no file: ${message}`]),
    ...(Object.keys(at).length > 0 ? [] : [`no place: ${message}`]),
  ]);

/** A reason is a clause that ends another's sentence. */
export const reasonBreaches = (reason: string, given: string): Breaches =>
  sentenceBreaches(`A clause: ${reason}.`, given).concat(
    reason.endsWith('.') || reason === '' ? [`no clause: ${reason}`] : [],
  );

/** There is a value or an error, and never both. */
export const outcomeBreaches = (
  { value, findings }: Outcome<object | null>,
  given: string,
  file?: string,
): Breaches => {
  const wrong = findings.some(({ severity }) => severity === 'error');
  return [
    ...findingBreaches(findings, given, file),
    ...(wrong === (value === null) ? [] : [`errors: ${wrong}, value: ${value !== null}`]),
  ];
};

/** What is written is read back as the same. */
export const roundTrip = (what: string, before: unknown, after: unknown): Breaches =>
  isDeepStrictEqual(before, after)
    ? []
    : [`${what} is read back as another: ${short(before)} became ${short(after)}`];

const short = (value: unknown): string => JSON.stringify(value).slice(0, 500);
