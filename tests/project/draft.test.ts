import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ORDER_COLUMNS, type OrderColumn } from '../../core/order/columns.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import { draftFromOrder } from '../../core/project/draft-from-order.ts';
import { draftRows } from '../../core/project/draft-rows.ts';
import type { Draft, DraftRow } from '../../core/project/draft.ts';
import { parseDraft } from '../../core/project/parse-draft.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { writeDraft } from '../../core/project/write-draft.ts';
import { writeProject } from '../../core/project/write-project.ts';
import { MACHINE_NAMES, readMachine } from '../jigs/setups.ts';
import { anyStandard } from '../rules/arbitraries.ts';
import { readStandard, standardJson } from '../rules/read-standard.ts';

const SEED = 20_310_603;

const defaults = { machine: readMachine('router'), registration: 'corner' } as const;

/** Cells as anybody may write them: trimmed, not empty, of any characters. */
const anyText = fc
  .oneof(fc.string({ unit: 'binary', maxLength: 30 }), fc.constantFrom('15 3/4', 'x', '½', '"', '1,25'))
  .map((text) => text.trim())
  .filter((text) => text !== '');

const anyCells: fc.Arbitrary<DraftRow['cells']> = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...ORDER_COLUMNS), anyText), { selector: ([column]) => column })
  .map((entries) => Object.fromEntries(entries));

const anyDraft: fc.Arbitrary<Draft> = fc
  .record({
    head: fc.record(
      {
        name: fc.string({ unit: 'grapheme' }),
        date: fc.oneof(fc.constant('2031-05-20'), fc.string()),
        unit: fc.constantFrom('in' as const, 'mm' as const),
      },
      { requiredKeys: ['name', 'unit'] },
    ),
    cells: fc.array(anyCells, { maxLength: 8 }),
    standard: anyStandard,
    machine: fc.constantFrom(...MACHINE_NAMES).map(readMachine),
    kerf: fc.double({ min: 1, max: 3, noNaN: true }),
    registration: fc.constantFrom('edge' as const, 'corner' as const),
    sharing: fc.oneof(fc.constantFrom('each' as const, 'fewest' as const), fc.integer({ min: 1, max: 99 })),
  })
  .map(({ head, cells, standard, machine, kerf, registration, sharing }) => ({
    ...head,
    rows: draftRows(cells),
    standard,
    // A router's kerf hangs on its relief radius.
    machine: machine.kind === 'laser' ? { ...machine, kerf } : machine,
    registration,
    sharing,
  }));

interface Document {
  order: { name: unknown; date?: unknown; unit: unknown; drawers: unknown };
  machine?: unknown;
  jigs?: unknown;
}

const document = (): Document & Readonly<Record<string, unknown>> => ({
  format: 'overhang-project',
  version: 2,
  order: { name: 'quay', unit: 'in', drawers: [{ cabinet: 'B1', opening_w: 'wide', qty: 2 }] },
  standard: standardJson('face-frame-undermount.json'),
});

describe('parseDraft', () => {
  test('parseDraft(writeDraft(draft)) is the draft, whatever its cells say', () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const text = writeDraft(draft);
        expect(parseDraft(JSON.parse(text), 'a.json', defaults)).toEqual({ value: draft, findings: [] });
        expect(text.endsWith('}\n')).toBe(true);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test('writeDraft writes the same bytes however the cells were put in', () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const turned = {
          ...draft,
          rows: draft.rows.map(({ id, cells }) => ({
            cells: Object.fromEntries(Object.entries(cells).toReversed()),
            id,
          })),
        };
        expect(writeDraft(turned)).toBe(writeDraft(draft));
      }),
      { seed: SEED + 1, numRuns: 50 },
    );
  });

  test('keeps faulty cells and a faulty name as text, and takes the given machine and jigs', () => {
    const json = document();
    json.order.name = '';
    json.order.date = 'tomorrow';
    const { value, findings } = parseDraft(json, 'a.json', defaults);
    expect(findings).toEqual([]);
    expect(value).toMatchObject({ name: '', date: 'tomorrow', ...defaults });
    expect(value?.rows).toEqual([{ id: 'r1', cells: { cabinet: 'B1', opening_w: 'wide', qty: '2' } }]);
  });

  test('trims cells, and takes an empty one for none', () => {
    const json = document();
    json.order.drawers = [{ cabinet: ' B1 ', drawer: ' ', note: '' }];
    expect(parseDraft(json, 'a.json', defaults).value?.rows[0]?.cells).toEqual({ cabinet: 'B1' });
  });

  test('refuses a wrong structure, standard or machine, with the path of the field', () => {
    const refused = (json: object): readonly (string | undefined)[] => {
      const { value, findings } = parseDraft(json, 'a.json', defaults);
      expect(value).toBeNull();
      return findings.map(({ at }) => at.field);
    };
    expect(
      refused({ ...document(), order: { name: 7, unit: 'ft', drawers: [{ opening_width: '1' }] } }),
    ).toEqual(['order.name', 'order.unit', 'order.drawers.0.opening_width']);
    expect(refused({ ...document(), jigs: 'side' })).toEqual(['jigs']);
    expect(refused({ ...document(), version: 3 })).toEqual(['version']);
    expect(refused({ ...document(), machine: { format: 'x' } })).toEqual(['machine.format']);
    const router: unknown = JSON.parse(
      readFileSync(new URL('../../assets/machines/router.json', import.meta.url), 'utf8'),
    );
    expect(refused({ ...document(), machine: Object.assign({}, router, { kerf: '0 mm' }) })).toEqual([
      'machine.kerf',
    ]);
    expect(refused({ ...document(), standard: {} })).toEqual(['standard.format']);
  });
});

describe('a project file', () => {
  test('parseProject reads the machine and the jigs of a file that holds them', () => {
    const draft = draftFromOrder(
      { name: 'quay', unit: 'in', drawers: [] },
      { ...defaults, standard: readStandard('face-frame-undermount.json') },
    );
    const { value } = parseProject(JSON.parse(writeDraft(draft)), 'a.json');
    expect(value).toMatchObject(defaults);
    expect(value === null ? null : writeProject(value)).toBe(writeDraft(draft));
  });
});

const surroundings = {
  standard: readStandard('face-frame-undermount.json'),
  machine: readMachine('laser-6'),
  registration: 'edge',
} as const;

const csv = (text: string) =>
  draftFromCsv(text, { file: 'a.csv', name: 'quay', unit: 'in', ...surroundings });

describe('parseDraft of sharing', () => {
  const shared = (sharing: unknown) => parseDraft({ ...document(), sharing }, 'a.json', defaults);

  test('reads older files, which have none, as each its own jig', () => {
    expect(parseDraft(document(), 'a.json', defaults).value?.sharing).toBe('each');
    expect([shared('fewest').value?.sharing, shared(12).value?.sharing]).toEqual(['fewest', 12]);
  });

  test.each(['some', 0, 2.5, true])('refuses %s and says what would be accepted', (sharing) => {
    const { value, findings } = shared(sharing);
    expect(value).toBeNull();
    expect(findings.map(({ message }) => message).join()).toContain(
      'write "each", "fewest", or a whole number of jigs, 1 or more',
    );
  });
});

describe('draftFromCsv', () => {
  test('keeps every cell as text, right or not, one row a drawer', () => {
    const { value, findings } = csv(
      'Cabinet,drawer,qty,style,opening w,opening_h\nB1,top,0,flush,wide, 6 in \n\n,,,,1,\n',
    );
    expect(findings).toEqual([]);
    expect(value).toEqual({
      name: 'quay',
      unit: 'in',
      ...surroundings,
      sharing: 'each',
      rows: [
        {
          id: 'r1',
          cells: {
            cabinet: 'B1',
            drawer: 'top',
            qty: '0',
            style: 'flush',
            opening_w: 'wide',
            opening_h: '6 in',
          },
        },
        { id: 'r2', cells: { opening_w: '1' } },
      ],
    });
  });

  test('tells the faults of the header and of the lexing, with the rows of the file', () => {
    const { value, findings } = csv(
      'cabinet,drawer,colour,qty,style,opening_w\nB1,top,red,1,inset,15\nB1,"low,1,inset,15\nB1,mid,1\n',
    );
    expect(findings.map(({ code, at }) => [code, at.row])).toEqual([
      ['order/quote', 3],
      ['order/column-unknown', 1],
      ['order/column-missing', 1],
      ['order/cells', 4],
    ]);
    expect(value.rows.map(({ cells }) => cells)).toEqual([
      { cabinet: 'B1', drawer: 'top', qty: '1', style: 'inset', opening_w: '15' },
    ]);
  });

  test('gives no rows for an empty file, and says so', () => {
    const { value, findings } = csv('');
    expect(value.rows).toEqual([]);
    expect(findings.map(({ code }) => code)).toEqual(['order/empty']);
  });
});

describe('draftFromOrder', () => {
  test('draftFromOrder(order) is written as a file that reads back as the order', () => {
    const text = readFileSync(new URL('../../assets/orders/harbor-library.csv', import.meta.url), 'utf8');
    const read = readOrderCsv(text, {
      file: 'a.csv',
      name: 'quay',
      unit: 'in',
      date: '2031-05-20',
      standard: surroundings.standard,
    }).value;
    const draft = draftFromOrder(read, surroundings);
    expect(draft.rows).toHaveLength(read.drawers.length);
    const { value } = parseProject(JSON.parse(writeDraft(draft)), 'a.json');
    const withoutRows = { ...read, drawers: read.drawers.map((drawer) => ({ ...drawer, row: 0 })) };
    expect(value?.order).toEqual(withoutRows);
  });
});

describe('draftRows', () => {
  test('draftRows(cells, taken) has ids that are not taken', () => {
    const cells: Partial<Record<OrderColumn, string>> = {};
    expect(draftRows([cells, cells]).map(({ id }) => id)).toEqual(['r1', 'r2']);
    const taken = [
      { id: 'r7', cells },
      { id: 'x', cells },
      { id: 'r3', cells },
    ];
    expect(draftRows([cells], taken).map(({ id }) => id)).toEqual(['r8']);
  });
});
