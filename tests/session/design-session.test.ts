import { isDeepStrictEqual } from 'node:util';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { folderContents } from '../../core/files/folder-contents.ts';
import { EVERYTHING, type OutputChoice } from '../../core/files/output-choice.ts';
import { OUTPUT_KINDS } from '../../core/files/output-kinds.ts';
import { hasErrors } from '../../core/findings/make.ts';
import { compensate } from '../../core/parts/compensate.ts';
import { designOrder } from '../../core/pipeline.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { writeDraft } from '../../core/project/write-draft.ts';
import type { OrderColumn } from '../../core/order/columns.ts';
import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession, type DesignSession } from '../../core/session/design-session.ts';
import { sessionOutput } from '../../core/session/session-output.ts';
import type { Designed } from '../../core/session/types.ts';
import { loadManifold } from '../../electron/cli/load-manifold.ts';
import { loadPaperFonts } from '../../shared/load-paper-fonts.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { readMachine } from '../jigs/setups.ts';
import { bundleFiles, textOf } from '../pipeline/bundle-files.ts';
import { demoDraft, firstRows, workroomRows } from './drafts.ts';
import { anyEdit } from './edits.ts';

const SEED = 20_310_601;

/** What an output loads when it needs it. */
const LOADERS = { paperFonts: loadPaperFonts, manifold: loadManifold };

const fresh = (draft: Draft): Designed => createDesignSession(STROKE_FONT).design(draft, 1);

const withCell = (draft: Draft, rowId: string, column: OrderColumn, text: string): Draft => ({
  ...draft,
  rows: draft.rows.map((row) =>
    row.id === rowId ? { ...row, cells: { ...row.cells, [column]: text } } : row,
  ),
});

/** A session that has designed a draft, and what it designed. */
function opened(draft: Draft): { readonly session: DesignSession; readonly before: Designed } {
  const session = createDesignSession(STROKE_FONT);
  return { session, before: session.design(draft, 1) };
}

/** What is equal to what the earlier design had under the same name, but another object. */
function madeAnew(before: Designed, after: Designed): readonly string[] {
  const named = ({ fits, jigs, parts, uses }: Designed): ReadonlyMap<string, unknown> =>
    new Map<string, unknown>([
      ...Object.entries(fits),
      ...jigs.map((jig) => [`jig ${jig.id}`, jig] as const),
      ...parts.map((part) => [`part ${part.id}`, part] as const),
      ...uses.map((use) => [`use ${use.rowId} ${use.edge} ${use.jigId}`, use] as const),
    ]);
  const earlier = named(before);
  return [...named(after)]
    .filter(([name, item]) => item !== earlier.get(name) && isDeepStrictEqual(item, earlier.get(name)))
    .map(([name]) => name);
}

describe('design gives what the plain chain gives', () => {
  test.each([
    ['harbor-library', 'edge', 'laser-6'],
    ['harbor-library', 'corner', 'laser-3'],
    ['boathouse-frameless', 'corner', 'router'],
    ['boathouse-frameless', 'edge', 'none'],
  ] as const)('for %s, jigs on %s, machine %s', (name, registration, machine) => {
    const draft: Draft = { ...demoDraft(name), registration, machine: readMachine(machine) };
    const session = createDesignSession(STROKE_FONT);
    const designed = session.design(draft, 7);
    const project = parseProject(JSON.parse(writeDraft(draft)), 'a.json').value;
    if (project === null) throw new Error('the demo order has errors');
    // A project file keeps no rows; a draft counts its own.
    const drawers = project.order.drawers.map((drawer, index) => ({ ...drawer, row: index + 1 }));
    const { value, findings } = designOrder(
      { ...project.order, drawers },
      { standard: draft.standard, machine: draft.machine, registration, font: STROKE_FONT },
    );
    expect(hasErrors(findings)).toBe(false);
    expect(designed.revision).toBe(7);
    expect(designed.findings.map(({ finding }) => finding)).toEqual(findings);
    expect(Object.values(designed.fits)).toEqual(value.fits);
    expect(Object.keys(designed.fits)).toEqual(draft.rows.map(({ id }) => id));
    expect(designed.jigs).toEqual(value.plan.jigs);
    expect(designed.uses).toEqual(
      value.plan.uses.map(({ fit, edge, jig, overhang, adjustment }) => ({
        rowId: draft.rows[fit.drawer.row - 1]?.id,
        edge,
        jigId: jig.id,
        overhang,
        adjustment,
      })),
    );
    for (const [index, part] of value.parts.entries()) {
      const { features: _features, ...summary } = part;
      expect(designed.parts[index]).toEqual(summary);
      expect(session.part(part.id)).toEqual({
        part,
        followed: compensate(part, draft.machine).value,
      });
    }
    expect(designed.parts).toHaveLength(value.parts.length);
  });

  test.each([
    { name: 'seven drawers', start: workroomRows(), numRuns: 5 },
    {
      name: 'an order whose guides lean and whose fronts have pulls',
      start: firstRows(demoDraft(), 12),
      numRuns: 1,
    },
  ])('after any edits of $name it is what a fresh session gives', ({ start, numRuns }) => {
    fc.assert(
      fc.property(fc.array(anyEdit, { minLength: 1, maxLength: 6 }), (edits) => {
        const session = createDesignSession(STROKE_FONT);
        session.design(start, 0);
        let draft = start;
        for (const edit of edits) {
          draft = edit.apply(draft);
          expect([edit.words, session.design(draft, 1)]).toEqual([edit.words, fresh(draft)]);
        }
        // Undo: an earlier draft, whose rows are the very same objects.
        expect(session.design(start, 1)).toEqual(fresh(start));
      }),
      { seed: SEED, numRuns },
    );
  });
});

describe('look', () => {
  test('is the beginning of the design, and changes nothing of what follows', () => {
    const draft = workroomRows();
    const session = createDesignSession(STROKE_FONT);
    const looked = session.look(draft, 3);
    const designed = session.design(draft, 3);
    expect(designed).toEqual(createDesignSession(STROKE_FONT).design(draft, 3));
    expect(looked.fits).toEqual(designed.fits);
    expect(looked.uses).toEqual(designed.uses);
    expect(looked.jigs).toEqual(designed.jigs.filter(({ drilling }) => drilling === undefined));
    expect(looked.jigs.length).toBeGreaterThan(1);
    expect([looked.fastenings, looked.aids, looked.parts]).toEqual([{}, [], []]);
  });

  test('of drawers that share jigs has no jigs yet', () => {
    const draft: Draft = { ...workroomRows(), sharing: 'fewest' };
    const { fits, jigs } = createDesignSession(STROKE_FONT).look(draft, 1);
    expect(Object.keys(fits)).toHaveLength(draft.rows.length);
    expect(jigs).toEqual([]);
  });
});

describe('design keeps what did not change', () => {
  const draft = demoDraft();

  test('everything, when the draft is the same', () => {
    const { session, before } = opened(draft);
    const after = session.design({ ...draft }, 2);
    expect(after.revision).toBe(2);
    const { revision: _revision, ...fields } = before;
    for (const [field, value] of Object.entries(fields)) {
      expect([field, Object.is(Reflect.get(after, field), value)]).toEqual([field, true]);
    }
    const [part] = before.parts;
    expect(session.part(part?.id ?? '')).toBe(session.part(part?.id ?? ''));
  });

  test('the fits of all other drawers, and the jigs whose set-ups are the same', () => {
    const { session, before } = opened(draft);
    const after = session.design(withCell(draft, 'r1', 'front_h', '7'), 2);
    const changed = draft.rows.map(({ id }) => id).filter((id) => after.fits[id] !== before.fits[id]);
    expect(changed).toEqual(['r1']);
    expect(after.fits['r1']?.frontH).toBeCloseTo(177.8, 9);
    // A top overhang has no jig: none is made anew.
    expect(after.jigs).toBe(before.jigs);
    expect(after.parts).toBe(before.parts);
  });

  test('the uses of all other drawers, and all that is said of them', () => {
    const { session, before } = opened(draft);
    const after = session.design(withCell(draft, 'r1', 'opening_w', '14 1/2'), 2);
    const rowsOf = (list: readonly { readonly rowId: string }[], other: readonly unknown[]) => [
      ...new Set(list.filter((item) => !other.includes(item)).map(({ rowId }) => rowId)),
    ];
    expect(before.aids.length).toBeGreaterThan(0);
    for (const field of ['uses', 'aids'] as const) {
      expect(rowsOf(after[field], before[field]).filter((id) => id !== 'r1')).toEqual([]);
    }
    for (const field of ['budgets', 'seasons', 'fastenings'] as const) {
      const changed = draft.rows.filter(({ id }) => after[field][id] !== before[field][id]);
      expect(changed.map(({ id }) => id)).toEqual(['r1']);
    }
  });

  test('the jigs that other drawers use, when an overhang changes', () => {
    const { session, before } = opened(draft);
    const after = session.design(withCell(draft, 'r1', 'bottom', 'lap 5 mm'), 2);
    const kept = after.jigs.filter((jig) => before.jigs.includes(jig));
    expect(kept.length).toBeGreaterThan(before.jigs.length / 2);
    expect(kept.length).toBeLessThan(after.jigs.length);
    const others = after.parts.filter((part) => kept.some(({ id }) => id === part.jig));
    expect(others.filter((part) => !before.parts.includes(part))).toEqual([]);
  });

  test('after any edits, whatever says the same under the same name', () => {
    const start = workroomRows();
    fc.assert(
      fc.property(fc.array(anyEdit, { minLength: 1, maxLength: 4 }), (edits) => {
        const session = createDesignSession(STROKE_FONT);
        let given = start;
        let before = session.design(given, 0);
        for (const edit of edits) {
          given = edit.apply(given);
          const after = session.design(given, 1);
          expect([edit.words, ...madeAnew(before, after)]).toEqual([edit.words]);
          before = after;
        }
      }),
      { seed: SEED + 1, numRuns: 12 },
    );
  });

  test('all, when a cell is written in another way', () => {
    const { session, before } = opened(withCell(draft, 'r2', 'opening_w', '15'));
    const after = session.design(withCell(draft, 'r2', 'opening_w', '15.0 in'), 2);
    expect(after.fits).toBe(before.fits);
    expect(after.jigs).toBe(before.jigs);
  });

  test('jigs and parts, when a row is moved and every finding has another number', () => {
    const faulty = withCell(draft, 'r9', 'opening_w', 'wide');
    const { session, before } = opened(faulty);
    const [first, ...rest] = faulty.rows;
    if (first === undefined) throw new RangeError('the demo order has no rows');
    const extra = { id: 'x1', cells: { ...first.cells, cabinet: 'X', room: 'New room' } };
    const after = session.design({ ...faulty, rows: [extra, first, ...rest] }, 2);
    expect(after.jigs.map(({ id }) => id)).toEqual(before.jigs.map(({ id }) => id));
    const kept = after.jigs.filter((jig) => before.jigs.includes(jig));
    expect(kept.length).toBeGreaterThan(0);
  });
});

describe('design names the rows of its findings', () => {
  test('a wrong cell by the row that it stands in, wherever that has moved', () => {
    const faulty = withCell(demoDraft(), 'r5', 'opening_w', 'wide');
    const moved = { ...faulty, rows: faulty.rows.toReversed() };
    for (const draft of [faulty, moved]) {
      const { findings, fits } = fresh(draft);
      const lengths = findings.filter(({ finding }) => finding.code === 'order/length');
      expect(lengths.map(({ rowId }) => rowId)).toEqual(['r5']);
      expect(lengths[0]?.finding.at).toMatchObject({
        row: draft.rows.findIndex(({ id }) => id === 'r5') + 1,
        column: 'opening_w',
      });
      expect(fits['r5']).toBeUndefined();
    }
  });

  test('a name or date that is wrong by no row, and an order without drawers', () => {
    const { findings, fits, jigs } = fresh({ ...demoDraft(), name: ' ', date: '2031-13-01', rows: [] });
    expect(findings.map(({ rowId, finding }) => [rowId, finding.code])).toEqual([
      [null, 'order/name'],
      [null, 'order/date'],
      [null, 'order/no-rows'],
    ]);
    expect([fits, jigs]).toEqual([{}, []]);
  });

  test('a drawer that no jig can set by its own row', () => {
    const draft = firstRows({ ...demoDraft(), machine: readMachine('router') }, 2);
    const thin = withCell(withCell(draft, 'r1', 'front_thickness', '1/4'), 'r2', 'front_thickness', '1/4');
    const { findings, fits } = fresh(thin);
    const none = findings.filter(({ finding }) => finding.code === 'jigs/none');
    expect(new Set(none.map(({ rowId }) => rowId))).toEqual(new Set(['r1', 'r2']));
    expect(Object.keys(fits)).toEqual(['r1', 'r2']);
  });

  test('a row whose fit is an error has a fit to be seen, but no jig', () => {
    const draft = withCell(firstRows(demoDraft(), 4), 'r2', 'box_w', '20');
    const { findings, fits, uses } = fresh(draft);
    expect(findings.filter(({ rowId }) => rowId === 'r2').map(({ finding }) => finding.code)).toContain(
      'fit/box-too-wide',
    );
    expect(fits['r2']?.boxW).toBeCloseTo(508, 9);
    expect(new Set(uses.map(({ rowId }) => rowId))).toEqual(new Set(['r1', 'r3', 'r4']));
  });

  test('a row without room for a box has no fit', () => {
    const { findings, fits } = fresh(withCell(firstRows(demoDraft(), 2), 'r1', 'opening_w', '1/8'));
    expect(findings.map(({ finding }) => finding.code)).toContain('fit/no-box');
    expect(Object.keys(fits)).toEqual(['r2']);
  });
});

describe('part', () => {
  test('is null before a design and for a part that there is not', () => {
    const session = createDesignSession(STROKE_FONT);
    expect(session.part('B1-plate')).toBeNull();
    session.design(demoDraft(), 1);
    expect(session.part('Z9-plate')).toBeNull();
  });
});

describe('output', () => {
  test('is null before a design and when anything is an error', () => {
    const session = createDesignSession(STROKE_FONT);
    expect(sessionOutput(session.whole())).toEqual({ value: null, findings: [] });
    session.design(withCell(demoDraft(), 'r3', 'qty', '0'), 1);
    const { value, findings } = sessionOutput(session.whole());
    expect(value).toBeNull();
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([['order/qty', 'error']]);
  });

  test('has two cut files for every part, the tables, and lists them in the manifest', async () => {
    const session = createDesignSession(STROKE_FONT);
    const { parts } = session.design(firstRows(demoDraft(), 4), 1);
    const output = sessionOutput(session.whole()).value;
    if (output === null) throw new Error('the demo order has errors');
    const files = await bundleFiles(output.steps(LOADERS));
    const paths = files.map(({ path }) => path);
    expect(paths.filter((path) => path.startsWith('dxf/'))).toHaveLength(parts.length);
    expect(paths.filter((path) => path.startsWith('svg/'))).toHaveLength(parts.length);
    expect(paths.slice(-4)).toEqual(['fit.csv', 'schedule.csv', 'parts.csv', 'read-first.txt']);
    const listed = files.map(({ path, content, report }) => ({
      path,
      size: content.length,
      sha256: `hash of ${path}`,
      ...(report === undefined ? {} : { report }),
    }));
    const manifest = JSON.parse(output.manifest(listed));
    expect(manifest.files.map((file: { path: string }) => file.path)).toEqual(paths.toSorted());
    expect(manifest.files[0].sha256).toBe(`hash of ${paths.toSorted()[0]}`);
  });

  /** One design for all choices. */
  let small: ReturnType<typeof opened> | undefined;

  /** The paths that a choice writes, and its manifest. */
  async function chosen(choice: OutputChoice) {
    const { session, before: designed } = (small ??= opened(firstRows(demoDraft(), 3)));
    const output = sessionOutput(session.whole(), choice).value;
    if (output === null) throw new Error('the choice is refused');
    const files = await bundleFiles(output.steps(LOADERS));
    const listed = files.map(({ path, content }) => ({ path, size: content.length, sha256: '' }));
    const contents = folderContents(designed.parts, 'mm', choice).map(({ path }) => path);
    const text = (path: string): string => textOf(files.find((file) => file.path === path));
    return {
      designed,
      text,
      contents,
      paths: files.map(({ path }) => path),
      manifest: chosenManifest.parse(JSON.parse(output.manifest(listed))),
    };
  }

  const chosenManifest = z.object({
    version: z.literal(2),
    left_out: z.object({ kinds: z.array(z.string()), jigs: z.array(z.string()) }),
    files: z.array(z.object({ path: z.string() })),
    parts: z.array(z.object({ id: z.string(), jig: z.string(), files: z.record(z.string(), z.string()) })),
  });

  test('writes what is listed beforehand and nothing else, whatever kinds are chosen', async () => {
    const ids = OUTPUT_KINDS.map(({ id }) => id);
    await fc.assert(
      fc.asyncProperty(fc.subarray(ids, { minLength: 1 }), fc.boolean(), async (kinds, some) => {
        const { paths, contents, manifest } = await chosen({
          ...EVERYTHING,
          kinds,
          jigs: some ? ['B1'] : 'all',
        });
        // How many sheets there are is known when they are packed: their folder is listed.
        const told = paths.map((path) => path.replace(/^(sheets|coupon|solids)\/.*/, '$1/'));
        expect(contents).toEqual([...new Set(told), 'manifest.json']);
        expect(manifest.files.map(({ path }) => path)).toEqual(paths.toSorted());
        expect(manifest.left_out.kinds).toEqual(ids.filter((id) => !kinds.includes(id)));
        const named = manifest.parts.flatMap(({ files }) => Object.values(files));
        expect(named.every((path) => paths.includes(path))).toBe(true);
      }),
      { seed: SEED + 2, numRuns: 6 },
    );
  });

  test('of one jig has its parts only, and says which jigs are left out', async () => {
    const { paths, manifest, designed, text } = await chosen({ ...EVERYTHING, jigs: ['S1'] });
    const others = designed.jigs.map(({ id }) => id).filter((id) => id !== 'S1');
    expect(others.length).toBeGreaterThan(0);
    expect(paths.filter((path) => path.startsWith('dxf/')).every((path) => path.startsWith('dxf/S1-'))).toBe(
      true,
    );
    expect(manifest.left_out).toEqual({ kinds: [], jigs: others });
    expect(new Set(manifest.parts.map(({ jig }) => jig))).toEqual(new Set(['S1']));
    expect(text('read-first.txt')).toContain(`Not in this folder, by choice: ${others.join(', ')}`);
    // The schedule is of the whole order: nobody is to think that an edge needs no jig.
    expect(text('schedule.csv')).toBe((await chosen(EVERYTHING)).text('schedule.csv'));
    expect(text('parts.csv')).not.toContain('B1-');
  });

  test('without SVG names no SVG file anywhere', async () => {
    const { text, manifest } = await chosen({
      ...EVERYTHING,
      kinds: EVERYTHING.kinds.filter((id) => id !== 'svg'),
    });
    for (const path of ['parts.csv', 'read-first.txt']) expect(text(path)).not.toMatch(/svg\/|svg {2}/);
    expect(JSON.stringify(manifest.parts)).not.toContain('svg/');
    expect(text('read-first.txt')).toMatch(/\r\ndxf {11}one cut file/);
  });

  test('of nothing, or of a jig that there is not, is refused with what there is', () => {
    const session = createDesignSession(STROKE_FONT);
    const { jigs } = session.design(firstRows(demoDraft(), 4), 1);
    const messages = (choice: OutputChoice) =>
      sessionOutput(session.whole(), choice).findings.map(({ message }) => message);
    const all = jigs.map(({ id }) => id).join(', ');
    expect(messages({ ...EVERYTHING, kinds: [], jigs: ['X9'] })).toEqual([
      `No file is chosen; choose at least one of ${OUTPUT_KINDS.map(({ label }) => label).join(', ')}.`,
      `This order has no jig "X9"; its jigs are ${all}.`,
    ]);
    expect(messages({ ...EVERYTHING, jigs: [] })).toEqual([
      `No jig is chosen; choose at least one, from ${jigs[0]?.id} to ${jigs.at(-1)?.id}.`,
    ]);
    expect(sessionOutput(session.whole(), { ...EVERYTHING, jigs: [] }).value).toBeNull();
  });
});
