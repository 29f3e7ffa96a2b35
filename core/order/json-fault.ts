/** Where a JSON text goes wrong, as an index into it, and what is wrong there, as a clause. */
export interface JsonFault {
  readonly at: number;
  readonly what: string;
}

/** Lists and objects within each other. A project has 9; more than this is no document of ours. */
export const DEEPEST_JSON = 100;

/** Values of any kind. A project of 20 thousand drawers has less than 600 thousand. */
export const MOST_JSON_VALUES = 1_000_000;

/** Characters of a number or word, which are then far too many. */
const LONGEST_WORD = 400;

const WORD = /^(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?|true|false|null)(?![\w.+-])/;
const SIMPLE_ESCAPES = '"\\/bfnrt';

const CUT_SHORT = 'the file ends in the middle, as one that was cut short; take a whole copy of it';

/** What may come next. */
type Next = 'value' | 'value or ]' | 'name' | 'name or }' | 'colon' | 'comma' | 'nothing';

const WANTED: Readonly<Record<Next, string>> = {
  value: 'a value',
  'value or ]': 'a value or ]',
  name: 'a name in quotation marks',
  'name or }': 'a name in quotation marks or }',
  colon: 'a colon',
  comma: 'a comma or a closing bracket',
  nothing: 'nothing more',
};

/**
 * The first fault of a JSON text (RFC 8259), or undefined. Besides the grammar it finds a name that stands twice
 * in one object, of which a reader would silently take one, and brackets that are too deep to write out again.
 */
export function jsonFault(text: string): JsonFault | undefined {
  /** The names so far of each object that is open; null for a list. */
  const open: (Set<string> | null)[] = [];
  let next: Next = 'value';
  let at = 0;
  let values = 0;
  const after = (): Next => (open.length === 0 ? 'nothing' : 'comma');
  for (;;) {
    at = skipBlanks(text, at);
    const sign = text[at];
    if (sign === undefined) return next === 'nothing' ? undefined : { at, what: CUT_SHORT };
    const begins: boolean = next === 'value' || next === 'value or ]';
    if (begins && sign !== ']') values += 1;
    if (values > MOST_JSON_VALUES) return { at, what: TOO_MANY };
    if (begins && (sign === '{' || sign === '[')) {
      open.push(sign === '{' ? new Set() : null);
      if (open.length > DEEPEST_JSON) return { at, what: TOO_DEEP };
      next = sign === '{' ? 'name or }' : 'value or ]';
      at += 1;
    } else if (isEnd(sign, next, open.at(-1))) {
      open.pop();
      next = after();
      at += 1;
    } else if (sign === '"' && (begins || next === 'name' || next === 'name or }')) {
      const end = textEnd(text, at);
      if (typeof end !== 'number') return end;
      if (!begins) {
        const twice = isTwice(text.slice(at, end), open.at(-1));
        if (twice) return { at, what: 'this name stands twice in the same object; keep one of them' };
      }
      next = begins ? after() : 'colon';
      at = end;
    } else if (sign === ':' && next === 'colon') {
      next = 'value';
      at += 1;
    } else if (sign === ',' && next === 'comma') {
      next = open.at(-1) === null ? 'value' : 'name';
      at += 1;
    } else {
      const [word = ''] = begins ? (WORD.exec(text.slice(at, at + LONGEST_WORD)) ?? []) : [];
      if (word === '') return { at, what: notWanted(text, at, next) };
      if (word.length === LONGEST_WORD) return { at, what: TOO_LONG };
      next = after();
      at += word.length;
    }
  }
}

const TOO_MANY = `there are more than ${MOST_JSON_VALUES} values; no document of this program has so many`;

const TOO_LONG = `a number has ${LONGEST_WORD} digits or more; no number here needs so many`;

const TOO_DEEP = `brackets stand ${DEEPEST_JSON + 1} deep within each other; ${DEEPEST_JSON} are read`;

/** Without the blanks of JSON, of which there may be very many. */
function skipBlanks(text: string, from: number): number {
  let at = from;
  while (at < text.length && ' \n\r\t'.includes(text.charAt(at))) at += 1;
  return at;
}

function isEnd(sign: string, next: Next, innermost: Set<string> | null | undefined): boolean {
  if (sign === ']') return innermost === null && (next === 'comma' || next === 'value or ]');
  return (
    sign === '}' &&
    innermost !== null &&
    innermost !== undefined &&
    (next === 'comma' || next === 'name or }')
  );
}

/** Behind the closing quotation mark of the text that begins here. */
function textEnd(text: string, from: number): number | JsonFault {
  for (let at = from + 1; at < text.length; at += 1) {
    const sign = text.charAt(at);
    if (sign === '"') return at + 1;
    if (sign < ' ') {
      const what =
        'a text in quotation marks holds a line break or control character; close the quotation mark, or write it as \\n';
      return { at, what };
    }
    if (sign !== '\\') continue;
    at += 1;
    const escape = text.charAt(at);
    if (escape === '' || (escape === 'u' && at + 4 >= text.length)) break;
    if (escape === 'u' && /^[0-9a-fA-F]{4}$/.test(text.slice(at + 1, at + 5))) at += 4;
    else if (!SIMPLE_ESCAPES.includes(escape)) {
      return { at: at - 1, what: 'a backslash stands before something that it cannot; write it twice' };
    }
  }
  return { at: text.length, what: CUT_SHORT };
}

/** Whether an object has a name already; it has it from now on. */
function isTwice(quoted: string, names: Set<string> | null | undefined): boolean {
  const name = String(JSON.parse(quoted));
  if (names?.has(name) === true) return true;
  names?.add(name);
  return false;
}

function notWanted(text: string, at: number, next: Next): string {
  const end = /^(?:[\p{L}\p{N}_.+-]+|.)/su.exec(text.slice(at, at + 30))?.[0] ?? '';
  const found = /^[\p{L}\p{N}\p{P}\p{S}]+$/u.test(end) ? ` “${end}”` : ' an unprintable character';
  return `here stands${found}, where ${WANTED[next]} is expected`;
}
