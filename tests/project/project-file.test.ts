import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { writeProject } from '../../core/project/write-project.ts';
import { anyOrder } from '../order/arbitraries.ts';
import { anyStandard } from '../rules/arbitraries.ts';
import { readStandard, standardJson } from '../rules/read-standard.ts';

const SEED = 20_310_529;

interface Document {
  format: unknown;
  version: unknown;
  order: { name: unknown; date?: unknown; unit: unknown; drawers: unknown };
  standard: unknown;
}

const drawer = {
  cabinet: 'B1',
  drawer: 'top',
  qty: 1,
  style: 'inset',
  opening_w: '15-3/4',
  opening_h: '6 in',
};

const document = (): Document => ({
  format: 'overhang-project',
  version: 2,
  order: { name: 'quay', unit: 'in', drawers: [drawer] },
  standard: standardJson('face-frame-undermount.json'),
});

const refused = (json: unknown): readonly (readonly (string | undefined)[])[] => {
  const { value, findings } = parseProject(json, 'quay.json');
  expect(value).toBeNull();
  return findings.map(({ code, at, message }) => [code, at.field, message]);
};

describe('parseProject', () => {
  test('parseProject(writeProject(project)) is the project, to the last bit', () => {
    fc.assert(
      fc.property(
        anyStandard.chain((standard) =>
          anyOrder(
            standard.styles.map((style) => style.name),
            Object.keys(standard.cabinetKinds),
            { species: Object.keys(standard.species), pulls: standard.pulls },
          ).map((order) => ({ order, standard })),
        ),
        (project) => {
          const text = writeProject(project);
          const { value, findings } = parseProject(JSON.parse(text), 'quay.json');
          expect(findings).toEqual([]);
          expect(value).toEqual(project);
          expect(text.endsWith('}\n')).toBe(true);
        },
      ),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('reads the demo order back as it is, rows of the CSV file included', () => {
    const standard = readStandard('face-frame-undermount.json');
    const csv = readFileSync(new URL('../../assets/orders/harbor-library.csv', import.meta.url), 'utf8');
    const { value: order } = readOrderCsv(csv, {
      file: 'a.csv',
      name: 'Harbor library',
      unit: 'in',
      standard,
    });
    const project = { order, standard };
    expect(parseProject(JSON.parse(writeProject(project)), 'b.json')).toEqual({
      value: project,
      findings: [],
    });
  });

  test('reads numbers as cells, and a row of 0 where none is given', () => {
    const json = document();
    json.order.drawers = [{ ...drawer, opening_w: 15.75, column: 1 }];
    const { value, findings } = parseProject(json, 'quay.json');
    expect(findings).toEqual([]);
    expect(value?.order.drawers[0]).toMatchObject({ openingW: 400.05, row: 0, column: 1 });
  });

  test('refuses another format and a newer version', () => {
    expect(refused({ ...document(), format: 'overhang-standard' })).toEqual([
      [
        'project/format',
        'format',
        'This is not a project file: one begins with "format": "overhang-project", "version": 2.',
      ],
    ]);
    expect(refused({ ...document(), version: 3 })).toEqual([
      [
        'project/newer-version',
        'version',
        'This project file has version 3, written by a newer program; this one reads version 2: update the program, or save the file as version 2.',
      ],
    ]);
    expect(refused(null)).toHaveLength(1);
  });

  test('names the path of a field that is wrong in the order', () => {
    const json = document();
    json.order = {
      name: ' ',
      unit: 'ft',
      drawers: [{ ...drawer, finish: 22, lefft: 1, row: -1 }, 7, { qty: true }],
    };
    expect(refused(json)).toEqual([
      ['project/field', 'order.name', 'Field order.name: it is empty; write a name.'],
      ['project/field', 'order.unit', 'Field order.unit: it is “ft”; write "in" or "mm".'],
      [
        'project/field',
        'order.drawers.0.row',
        'Field order.drawers.0.row: it is below 0; write a row of 0 or more.',
      ],
      ['project/field', 'order.drawers.1', 'Field order.drawers.1: it is 7; write an object in braces.'],
      ['project/field', 'order.drawers.2.qty', 'Field order.drawers.2.qty: write a text or a number.'],
      [
        'project/unread',
        'order.drawers.0.finish',
        'Field order.drawers.0.finish: this program does not read “finish”; it stays in the file as it is.',
      ],
      [
        'project/field',
        'order.drawers.0.lefft',
        'Field order.drawers.0.lefft: there is no “lefft”; did you mean left? The fields here are row, cabinet, drawer, qty, style, opening_w, opening_h, room, cabinet_kind, column, position, left, right, top, bottom, front_w, front_h, box_w, box_h, box_d, front, front_thickness, species, box_side, box_front, pull, note.',
      ],
    ]);
  });

  test('names the path of a field that is wrong in the standard', () => {
    const json = document();
    json.standard = { ...standardJson('face-frame-undermount.json'), slide: 'roller' };
    expect(refused(json)).toEqual([
      [
        'rules/slide-unknown',
        'standard.slide',
        'Field standard.slide: there is no slide “roller”; write one of undermount.',
      ],
    ]);
    json.standard = { ...standardJson('face-frame-undermount.json'), version: 3 };
    expect(refused(json)[0]?.slice(0, 2)).toEqual(['rules/newer-version', 'standard.version']);
  });

  test('tells the rows by the same rules as the CSV reader, with the path in the place of the row', () => {
    const json = document();
    json.order.date = '2031-02-30';
    json.order.drawers = [
      { ...drawer, qty: 0, style: 'flush', left: 'inset' },
      { ...drawer, drawer: 'TOP', opening_h: undefined },
      { ...drawer, cabinet: 'B2', column: 2 },
      { ...drawer, drawer: 'low', position: 'middle' },
    ].map((one) => Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined)));
    const found = refused(json);
    expect(found.map(([code, field]) => [code, field])).toEqual([
      ['order/date', 'order.date'],
      ['order/qty', 'order.drawers.0.qty'],
      ['order/style', 'order.drawers.0.style'],
      ['order/edge', 'order.drawers.0.left'],
      ['order/required', 'order.drawers.1.opening_h'],
      ['order/drawer-duplicate', 'order.drawers.1.drawer'],
      ['order/column-gap', 'order.drawers.2.column'],
      ['order/cabinet-split', 'order.drawers.3.cabinet'],
    ]);
    expect(found[5]?.[2]).toBe(
      'Field order.drawers.1.drawer reads “TOP”, and so does field order.drawers.0.drawer of the same cabinet; give each drawer its own name.',
    );
  });

  test('keeps a warning beside the project', () => {
    const json = document();
    json.order.drawers = [drawer, { ...drawer, drawer: 'low', qty: 2 }];
    const { value, findings } = parseProject(json, 'quay.json');
    expect(value?.order.drawers).toHaveLength(2);
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['order/qty-differs', 'warning'],
    ]);
  });
});
