import { describe, expect, test } from 'vitest';
import { DEEPEST_JSON, MOST_JSON_VALUES } from '../../core/order/json-fault.ts';
import { readJson } from '../../core/order/read-json.ts';

const fault = (text: string): string | undefined => {
  const { value, findings } = readJson(text, 'a.json');
  expect(value === undefined).toBe(findings.length > 0);
  return findings[0]?.message;
};

// The grammar is that of RFC 8259, from memory.
describe('readJson', () => {
  test.each([
    ['{"a": [1, -0.5e+3, "\\u00bd\\n", true, false, null, {}], "": []}'],
    ['\r\n\t "text" '],
    ['0'],
    ['{"__proto__": 1, "constructor": 2}'],
  ])('reads %j as the language does', (text) => {
    expect(fault(text)).toBeUndefined();
    expect(readJson(text, 'a.json').value).toEqual(JSON.parse(text));
  });

  test.each([
    ['', 'The file is empty; take a whole copy of it.'],
    ['{"a": 1,\n "b": x}', 'Line 2, column 7: here stands “x”, where a value is expected.'],
    ['{"a": 1 "b": 2}', 'Line 1, column 9: here stands “"”, where a comma or a closing bracket is expected.'],
    ['{"a" 1}', 'Line 1, column 6: here stands “1”, where a colon is expected.'],
    ['{a: 1}', 'Line 1, column 2: here stands “a”, where a name in quotation marks or } is expected.'],
    ['[1,]', 'Line 1, column 4: here stands “]”, where a value is expected.'],
    ['{"a":1,}', 'Line 1, column 8: here stands “}”, where a name in quotation marks is expected.'],
    ['[1}', 'Line 1, column 3: here stands “}”, where a comma or a closing bracket is expected.'],
    ['{} {}', 'Line 1, column 4: here stands “{”, where nothing more is expected.'],
    ['[01]', 'Line 1, column 2: here stands “01”, where a value or ] is expected.'],
    ['[1.]', 'Line 1, column 2: here stands “1.”, where a value or ] is expected.'],
    ['[NaN]', 'Line 1, column 2: here stands “NaN”, where a value or ] is expected.'],
    ['[\u0000]', 'Line 1, column 2: here stands an unprintable character, where a value or ] is expected.'],
    ['{"a":1,"a":2}', 'Line 1, column 8: this name stands twice in the same object; keep one of them.'],
    ['{"a":1,"\\u0061":2}', 'Line 1, column 8: this name stands twice in the same object; keep one of them.'],
    ['["\\x"]', 'Line 1, column 3: a backslash stands before something that it cannot; write it twice.'],
    [
      '["a\nb"]',
      'Line 1, column 4: a text in quotation marks holds a line break or control character; close the quotation mark, or write it as \\n.',
    ],
  ])('says where %j goes wrong, and what was expected', (text, message) => {
    expect(fault(text)).toBe(message);
  });

  test('says of every piece that was cut off a document that it was cut short', () => {
    const whole = '{"name": "qu\\u00e4y", "rows": [{"qty": 1}, []], "ok": true}';
    for (let end = 1; end < whole.length; end += 1) {
      const { findings } = readJson(whole.slice(0, end), 'a.json');
      // A word that is cut is told as the word that it is.
      expect(findings[0]?.message).toMatch(/cut short|“tr?u?”/);
    }
  });

  test('reads brackets as deep as it says and no deeper, and ends at once at a hundred thousand', () => {
    const deep = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);
    expect(fault(deep(DEEPEST_JSON))).toBeUndefined();
    expect(fault(deep(DEEPEST_JSON + 1))).toContain(`${DEEPEST_JSON} are read`);
    expect(fault('[{"a":'.repeat(100_000))).toContain('deep within each other');
  });

  test('takes as many values as it says and no more', () => {
    expect(fault(`[${'0,'.repeat(MOST_JSON_VALUES - 2)}0]`)).toBeUndefined();
    expect(fault(`[${'0,'.repeat(MOST_JSON_VALUES)}0]`)).toContain(`more than ${MOST_JSON_VALUES} values`);
  });
});
