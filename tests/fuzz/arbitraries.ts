import * as fc from 'fast-check';

/** Characters that cut, quote, turn, hide or break text. */
const NASTY = [
  '\u0000',
  '\u0007',
  '\u001b',
  '\u0085',
  '\u200b',
  '\u202e',
  '\u2028',
  '\ufeff',
  '\ufffd',
  '\ud800',
  '\udc00',
  '\r',
  '\n',
  '\r\n',
  '\t',
  '"',
  '""',
  "'",
  '\\',
  '/',
  '../',
  '%2e%2e%2f',
  ',',
  ';',
  '½',
  '⅓',
  '٣',
  'İ',
  'ß',
  '__proto__',
  'constructor',
  'toString',
];

/** Any text: code units alone and in pairs, whole characters, nasty pieces, long runs of one character. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: fc.string({ unit: 'binary', maxLength: 80 }) },
  { weight: 2, arbitrary: fc.string({ unit: 'grapheme', maxLength: 80 }) },
  { weight: 2, arbitrary: fc.array(fc.constantFrom(...NASTY), { maxLength: 8 }).map((all) => all.join('')) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        fc.constantFrom('a', '1', ' ', '"', '(', '-', '½', '\u0301', '😀'),
        fc.integer({ min: 1, max: 3000 }),
      )
      .map(([sign, times]) => sign.repeat(times)),
  },
);

/** Text out of the words of a grammar, with a nasty piece between them now and then. */
export const textOf = (words: readonly string[]): fc.Arbitrary<string> => {
  const piece = fc.oneof(
    { weight: 8, arbitrary: fc.constantFrom(...words) },
    { weight: 1, arbitrary: fc.constantFrom(...NASTY) },
  );
  const joint = fc.constantFrom(' ', ' ', ' ', '', '  ', '\u00a0');
  return fc.oneof(
    {
      weight: 4,
      arbitrary: fc
        .array(fc.tuple(piece, joint), { maxLength: 9 })
        .map((all) => all.map((pair) => pair.join('')).join('')),
    },
    { weight: 1, arbitrary: anyText },
  );
};

/** A text with pieces cut out of it, others put in, or its end cut off. */
export const mangledText = (sources: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...sources),
      fc.array(
        fc.record({
          at: fc.double({ min: 0, max: 1, noNaN: true }),
          length: fc.nat(12),
          put: fc.oneof(fc.constantFrom('', '{', '}', '[', ']', ':', '0', '-', 'null', ...NASTY), anyText),
        }),
        { maxLength: 6 },
      ),
      fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    )
    .map(([source, edits, end]) => {
      const edited = edits.reduce((text, { at, length, put }) => {
        const place = Math.floor(at * text.length);
        return text.slice(0, place) + put + text.slice(place + length);
      }, source);
      return end === null ? edited : edited.slice(0, Math.floor(end * edited.length));
    });

const anyKey = fc.oneof(
  fc.constantFrom(
    '__proto__',
    'constructor',
    'prototype',
    'toString',
    'hasOwnProperty',
    '',
    'value',
    'name',
    '0',
  ),
  anyText,
);

/** What can stand where something else should in a JSON document. */
export const anyJson: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, 0, -1, 1.5, 1e308, 5e-324, 2 ** 53, '', ' ', [], {}, [[]], [null]),
  anyText,
  fc.jsonValue({ maxDepth: 3 }),
  fc.tuple(anyKey, fc.jsonValue({ maxDepth: 1 })).map(([key, value]): unknown => withKey({}, key, value)),
  fc.integer({ min: 1, max: 60 }).map((depth): unknown => JSON.parse('['.repeat(depth) + ']'.repeat(depth))),
);

/** An own field, also where the name is that of a prototype. */
function withKey(target: object, key: string, value: unknown): object {
  Reflect.defineProperty(target, key, { value, enumerable: true, writable: true, configurable: true });
  return target;
}

/** A document with some of its fields replaced, taken out or added to. */
export const mangledJson = (sources: readonly unknown[]): fc.Arbitrary<unknown> =>
  fc
    .tuple(
      fc.constantFrom(...sources),
      fc.array(
        fc.record({
          at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
          how: fc.constantFrom('replace', 'replace', 'remove', 'add'),
          key: anyKey,
          put: anyJson,
        }),
        { minLength: 1, maxLength: 4 },
      ),
    )
    .map(([source, edits]) => {
      const document: unknown = structuredClone(source);
      for (const { at, how, key, put: given } of edits) {
        // A value of its own: the same one within itself would never end.
        const put: unknown = structuredClone(given);
        const places = placesIn(document);
        const place = places[Math.floor(at * places.length)];
        if (place === undefined) continue;
        const [parent, name] = place;
        const child: unknown = Reflect.get(parent, name);
        if (how === 'remove') Reflect.deleteProperty(parent, name);
        else if (how === 'replace') withKey(parent, name, put);
        else if (typeof child === 'object' && child !== null) withKey(child, key, put);
        else withKey(parent, Array.isArray(parent) ? '0' : key, put);
      }
      // What JSON cannot hold, such as a hole in a list, becomes what it can.
      const plain: unknown = JSON.parse(JSON.stringify(document));
      return plain;
    });

/** Every field of a document with what it belongs to. */
function placesIn(value: unknown): readonly (readonly [object, string])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => [[value, key] as const, ...placesIn(Reflect.get(value, key))]);
}
