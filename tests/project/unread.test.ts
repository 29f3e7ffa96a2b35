import * as fc from 'fast-check';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { parseDraft } from '../../core/project/parse-draft.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { writeDraft } from '../../core/project/write-draft.ts';
import { withCell } from '../../renderer/store/draft-edits.ts';
import { readMachine } from '../jigs/setups.ts';
import { jsonObject, standardJson } from '../rules/read-standard.ts';

const SEED = 20_310_608;
const defaults = { machine: readMachine('router'), registration: 'corner' } as const;

/** A project in which another program left notes of its own: everywhere that the project's own fields stand. */
const document = (document: object, order: object, drawer: object): object => ({
  format: 'overhang-project',
  version: 2,
  order: {
    name: 'quay',
    unit: 'in',
    ...order,
    drawers: [
      { cabinet: 'B1', drawer: 'top', qty: '1', style: 'inset', opening_w: '15', opening_h: '6', ...drawer },
      { cabinet: 'B1', drawer: 'low', qty: '1', style: 'inset', opening_w: '15', opening_h: '9' },
    ],
  },
  standard: standardJson('face-frame-undermount.json'),
  ...document,
});

const NOTES = { customer: { phone: '555', visits: [1, null, true] }, '': 0 };

describe('parseDraft keeps what it does not know', () => {
  test('through opening, editing the same row, and saving; each name is told once', () => {
    const { value, findings } = parseDraft(
      document({ crm: NOTES }, { customer: 'A' }, { finish: 'oil' }),
      'a.json',
      defaults,
    );
    if (value === null) throw new Error('refused');
    expect(findings.map(({ code, severity, at }) => [code, severity, at.field])).toEqual([
      ['project/unread', 'warning', 'crm'],
      ['project/unread', 'warning', 'order.customer'],
      ['project/unread', 'warning', 'order.drawers.0.finish'],
    ]);
    const edited = withCell('r1', 'opening_w', '16')(value);
    const saved: unknown = JSON.parse(writeDraft(edited));
    expect(saved).toMatchObject({ crm: NOTES, order: { customer: 'A' } });
    expect(saved).toMatchObject({
      order: { drawers: [{ opening_w: '16', finish: 'oil' }, { drawer: 'low' }] },
    });
    expect(parseDraft(saved, 'a.json', defaults).value).toEqual(edited);
  });

  test('whatever it is called and holds, names of prototypes among them', () => {
    const name = fc
      .oneof(fc.constantFrom('__proto__', 'constructor', 'toString', ''), fc.string({ unit: 'binary' }))
      .map((text) => (/^[a-z]/i.test(text) && text !== 'constructor' ? `~${text}` : text));
    const fields = fc
      .array(fc.tuple(name, fc.jsonValue()), { maxLength: 3 })
      .map((entries): object => JSON.parse(JSON.stringify(Object.fromEntries(entries))));
    fc.assert(
      fc.property(fields, fields, fields, (ofDocument, ofOrder, ofDrawer) => {
        const json = document(ofDocument, ofOrder, ofDrawer);
        const { value } = parseDraft(json, 'a.json', defaults);
        if (value === null) throw new Error('refused');
        const own = { standard: null, machine: null, jigs: null };
        const saved = { ...jsonObject(JSON.parse(writeDraft(value))), ...own };
        const expected: unknown = JSON.parse(JSON.stringify({ ...json, ...own }));
        expect(isDeepStrictEqual(saved, expected)).toBe(true);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test('a name that stands in many drawers is told once', () => {
    const json = document({}, {}, { finish: 'oil' });
    const { findings } = parseProject(
      JSON.parse(JSON.stringify(json).replaceAll('"opening_h":"9"', '"opening_h":"9","finish":"wax"')),
      'a.json',
    );
    expect(findings.map(({ at }) => at.field)).toEqual(['order.drawers.0.finish']);
  });

  test.each([
    [{ machin: {} }, {}, {}, 'machine'],
    [{}, { units: 'mm' }, {}, 'unit'],
    [{}, {}, { openning_w: '1' }, 'opening_w'],
  ])('a name that is nearly one of ours is refused: %j %j %j', (ofDocument, ofOrder, ofDrawer, near) => {
    const { value, findings } = parseDraft(document(ofDocument, ofOrder, ofDrawer), 'a.json', defaults);
    expect(value).toBeNull();
    expect(findings.map(({ message }) => message).join()).toContain(`did you mean ${near}?`);
  });
});
