import * as fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import {
  addRow,
  duplicateRow,
  markSaved,
  moveRow,
  openDraft,
  pasteCells,
  recoverDraft,
  redo,
  removeRow,
  selectJig,
  selectPart,
  selectRow,
  setCell,
  setDate,
  setDesigned,
  setMachine,
  setName,
  setOnlyAttention,
  setRegistration,
  setStage,
  setStandard,
  setUnit,
  settle,
  stepAttention,
  stepRow,
  toggleTheme,
  toggleViewUnit,
  undo,
} from '../../renderer/store/changes.ts';
import {
  canRedo,
  canUndo,
  findingsOfRow,
  hasErrors,
  isUnsaved,
  redoLabel,
  shownRows,
  undoLabel,
} from '../../renderer/store/readings.ts';
import type { ProgramState } from '../../renderer/store/types.ts';
import { useProgram } from '../../renderer/store/use-program.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { readMachine } from '../jigs/setups.ts';
import { readStandard } from '../rules/read-standard.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';

const state = (): ProgramState => useProgram.getState();
const started = state();
const session = createDesignSession(STROKE_FONT);
const draft = firstRows(demoDraft(), 6);

/** What the worker does, at once. */
let revision = 0;
function designNow(): void {
  revision += 1;
  setDesigned(session.design(state().draft, revision));
}

const cell = (rowId: string): string | undefined =>
  state().draft.rows.find(({ id }) => id === rowId)?.cells.opening_w;

beforeEach(() => {
  useProgram.setState(started, true);
  openDraft(draft, { name: 'quay.json', handle: '/a/quay.json' });
});

describe('the first start', () => {
  test('has the demo order, its first row selected and, once designed, a jig of that row', () => {
    useProgram.setState(started, true);
    expect(state().draft).toMatchObject({ name: 'Harbor library', date: '2026-12-01', unit: 'in' });
    expect(state().draft.rows).toHaveLength(36);
    expect(state().selection).toEqual({ rowId: 'r1', jigId: null, partId: null });
    expect(state().view).toEqual({
      page: 'bench',
      stage: 'seat',
      theme: 'light',
      unit: 'in',
      onlyAttention: false,
    });
    expect(state().file).toEqual({ name: null, handle: null, savedDraft: state().draft });
    designNow();
    expect(hasErrors(state())).toBe(false);
    const { rowId, jigId, partId } = state().selection;
    expect(state().designed?.uses).toContainEqual(expect.objectContaining({ rowId, jigId }));
    expect(state().designed?.parts.find(({ id }) => id === partId)?.jig).toBe(jigId);
  });
});

describe('undo and redo', () => {
  test('every change of the draft is one step with a label, taken back in turn', () => {
    const changes: readonly (readonly [string, () => void])[] = [
      ['change opening w of row 2', () => setCell('r2', 'opening_w', '14')],
      ['add a row', () => addRow('r2')],
      ['duplicate row 1', () => duplicateRow('r1')],
      ['move row 1', () => moveRow('r1', 1)],
      ['remove row 6', () => removeRow('r4')],
      ['paste 2 rows', () => pasteCells('r5', 'note', [['a'], ['b']])],
      ['change the name', () => setName('Quay')],
      ['change the date', () => setDate('')],
      ['change the unit of bare numbers', () => setUnit('mm')],
      ['change what the jigs register on', () => setRegistration('corner')],
      ['change the shop standard', () => setStandard(readStandard('face-frame-side-mount.json'))],
      ['change the machine profile', () => setMachine(readMachine('router'))],
    ];
    const drafts: Draft[] = [state().draft];
    for (const [label, make] of changes) {
      make();
      drafts.push(state().draft);
      expect(undoLabel(state())).toBe(label);
      expect(state().draft).not.toBe(drafts.at(-2));
    }
    for (const [index, [label]] of [...changes.entries()].toReversed()) {
      expect(undoLabel(state())).toBe(label);
      undo();
      expect(state().draft).toBe(drafts[index]);
      expect(redoLabel(state())).toBe(label);
    }
    expect(canUndo(state())).toBe(false);
    for (const next of drafts.slice(1)) {
      redo();
      expect(state().draft).toBe(next);
    }
    expect(canRedo(state())).toBe(false);
  });

  test('typing in one cell is one step, until the field is left', () => {
    const before = cell('r1');
    for (const text of ['1', '14', '14 1', '14 1/', '14 1/2']) setCell('r1', 'opening_w', text);
    setCell('r2', 'opening_w', '9');
    undo();
    expect([cell('r1'), undoLabel(state())]).toEqual(['14 1/2', 'change opening w of row 1']);
    undo();
    expect(cell('r1')).toBe(before);
    expect(canUndo(state())).toBe(false);

    setCell('r1', 'opening_w', '13');
    settle();
    setCell('r1', 'opening_w', '12');
    undo();
    expect(cell('r1')).toBe('13');
  });

  test('typing that ends where it began is no step, and nothing is unsaved', () => {
    const text = cell('r1') ?? '';
    setCell('r1', 'opening_w', `${text} x`);
    setCell('r1', 'opening_w', text);
    expect(state().draft).toBe(draft);
    expect([canUndo(state()), isUnsaved(state())]).toEqual([false, false]);
  });

  test('a change after undo ends what could be made again', () => {
    setCell('r1', 'opening_w', '13');
    undo();
    setCell('r1', 'opening_w', '12');
    expect(canRedo(state())).toBe(false);
    undo();
    expect(state().draft).toBe(draft);
  });

  test('a change that changes nothing is no step', () => {
    setCell('r1', 'opening_w', cell('r1') ?? '');
    setName(state().draft.name);
    moveRow('r1', -1);
    expect(canUndo(state())).toBe(false);
  });

  test('undo selects the row that it changed', () => {
    setCell('r3', 'opening_w', '13');
    selectRow('r1');
    undo();
    expect(state().selection.rowId).toBe('r3');
  });

  test('after any changes, as many undos lead back to the very first draft', () => {
    const acts: readonly ((index: number) => void)[] = [
      (index) => setCell(`r${index}`, 'note', `n${index}`),
      (index) => setCell(`r${index}`, 'opening_w', `${index + 10}`),
      (index) => addRow(`r${index}`),
      (index) => removeRow(`r${index}`),
      (index) => duplicateRow(`r${index}`),
      (index) => moveRow(`r${index}`, 2),
      () => undo(),
      () => redo(),
      () => settle(),
      (index) => selectRow(`r${index}`),
    ];
    const act = fc.tuple(fc.nat({ max: acts.length - 1 }), fc.integer({ min: 1, max: 9 }));
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40 }), (made) => {
        openDraft(draft, { name: null, handle: null });
        for (const [what, index] of made) {
          acts[what]?.(index);
          const { rows } = state().draft;
          expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
          const { rowId } = state().selection;
          expect(rowId === null ? rows.length : rows.filter(({ id }) => id === rowId).length).toBe(
            rowId === null ? 0 : 1,
          );
        }
        while (canUndo(state())) undo();
        expect(state().draft).toBe(draft);
        expect(isUnsaved(state())).toBe(false);
      }),
      { seed: 20_310_607, numRuns: 200 },
    );
  });
});

describe('the document', () => {
  test('is unsaved from the first change until it is saved or undone', () => {
    expect(isUnsaved(state())).toBe(false);
    setCell('r1', 'opening_w', '13');
    expect(isUnsaved(state())).toBe(true);
    undo();
    expect(isUnsaved(state())).toBe(false);
    redo();
    markSaved(state().draft, { name: 'b.json', handle: 'b' });
    expect(isUnsaved(state())).toBe(false);
    expect(state().file).toMatchObject({ name: 'b.json', handle: 'b' });
  });

  test('typing on after a save is another step, so that undo leads back to what was saved', () => {
    setCell('r1', 'opening_w', '13');
    markSaved(state().draft, { name: 'b.json', handle: 'b' });
    setCell('r1', 'opening_w', '13 1/2');
    expect(isUnsaved(state())).toBe(true);
    undo();
    expect(isUnsaved(state())).toBe(false);
  });

  test('a save of an older draft leaves later changes unsaved', () => {
    const written = state().draft;
    setCell('r1', 'opening_w', '13');
    markSaved(written, { name: 'b.json', handle: 'b' });
    expect(isUnsaved(state())).toBe(true);
  });

  test('recovered work is unsaved, and another document has no history', () => {
    setCell('r1', 'opening_w', '13');
    recoverDraft(demoDraft(), { name: null, handle: null });
    expect(isUnsaved(state())).toBe(true);
    expect(canUndo(state())).toBe(false);
  });
});

describe('what is picked', () => {
  test('removing the selected row selects the one that takes its place, then the last', () => {
    selectRow('r2');
    removeRow('r2');
    expect(state().selection.rowId).toBe('r3');
    selectRow('r6');
    removeRow('r6');
    expect(state().selection.rowId).toBe('r5');
    for (const rowId of ['r1', 'r3', 'r4', 'r5']) removeRow(rowId);
    expect(state().selection.rowId).toBeNull();
  });

  test('removing another row keeps the selection, and a new row is selected', () => {
    selectRow('r2');
    removeRow('r1');
    expect(state().selection.rowId).toBe('r2');
    addRow('r3');
    expect(state().selection.rowId).toBe('r7');
    duplicateRow('r2');
    expect(state().selection.rowId).toBe('r8');
    pasteCells('r6', 'note', [['a'], ['b']]);
    expect(state().selection.rowId).toBe('r8');
  });

  test('row, jig and part go together', () => {
    designNow();
    const { designed } = state();
    const own = (rowId: string) => designed?.uses.filter((use) => use.rowId === rowId) ?? [];
    selectRow('r4');
    expect(own('r4').map(({ jigId }) => jigId)).toContain(state().selection.jigId);
    const foreign = designed?.jigs.find(({ id }) => !own('r4').some(({ jigId }) => jigId === id));
    selectJig(foreign?.id ?? null);
    expect(own(state().selection.rowId ?? '').map(({ jigId }) => jigId)).toContain(foreign?.id);
    const part = designed?.parts.find(({ jig }) => jig === designed.jigs[0]?.id);
    selectPart(part?.id ?? null);
    expect(state().selection).toMatchObject({ partId: part?.id, jigId: part?.jig });
  });

  test('a jig that is gone makes way for one of the same row, and an older design is dropped', () => {
    designNow();
    selectRow('r1');
    const { designed } = state();
    if (designed === null) throw new Error('nothing was designed');
    setDesigned({ ...designed, revision: designed.revision + 1, jigs: [], uses: [], parts: [] });
    expect(state().selection).toEqual({ rowId: 'r1', jigId: null, partId: null });
    setDesigned(designed);
    expect(state().designed?.jigs).toEqual([]);
    setDesigned({ ...designed, revision: designed.revision + 2 });
    expect(state().selection.jigId).not.toBeNull();
    revision += 2;
  });

  test('goes to the next and previous row, and to those with a finding, round the ends', () => {
    setCell('r2', 'opening_w', 'wide');
    setCell('r5', 'qty', '0');
    designNow();
    selectRow('r1');
    stepRow(-1);
    expect(state().selection.rowId).toBe('r6');
    stepRow(1);
    expect(state().selection.rowId).toBe('r1');
    const attention = state().draft.rows.filter(({ id }) => findingsOfRow(state(), id).length > 0);
    expect(attention.map(({ id }) => id)).toEqual(expect.arrayContaining(['r2', 'r5']));
    setOnlyAttention(true);
    expect(shownRows(state())).toEqual(attention);
    const visited = attention.map(() => {
      stepAttention(1);
      return state().selection.rowId;
    });
    expect(new Set(visited)).toEqual(new Set(attention.map(({ id }) => id)));
    stepRow(1);
    expect(attention.map(({ id }) => id)).toContain(state().selection.rowId);
  });

  test('a row that is not there cannot be selected', () => {
    selectRow('r2');
    selectRow('r99');
    expect(state().selection.rowId).toBe('r2');
  });

  test('stays where it is when no row needs attention', () => {
    selectRow('r3');
    stepAttention(1);
    expect(state().selection.rowId).toBe('r3');
  });
});

describe('only what needs attention', () => {
  const notes = () => state().draft.rows.map(({ cells }) => cells.note);

  /** A design that has a finding of these rows and of no other. */
  function findIn(...rowIds: readonly string[]): void {
    designNow();
    const { designed } = state();
    if (designed === null) throw new Error('nothing was designed');
    const finding = { code: 'test', severity: 'error', message: 'wide', at: {}, values: {} } as const;
    revision += 1;
    setDesigned({ ...designed, revision, findings: rowIds.map((rowId) => ({ rowId, finding })) });
  }

  test('a picked row that is hidden makes way for the first that is shown, one that is shown stays picked', () => {
    findIn('r2', 'r5');
    selectRow('r5');
    setOnlyAttention(true);
    expect(state().selection.rowId).toBe('r5');
    setOnlyAttention(false);
    selectRow('r3');
    setOnlyAttention(true);
    expect(state().selection.rowId).toBe('r2');
    expect(shownRows(state()).map(({ id }) => id)).toEqual(['r2', 'r5']);
  });

  test('no row is picked when none needs attention, whatever changes, and the first one when all are shown', () => {
    findIn();
    selectRow('r3');
    setOnlyAttention(true);
    expect(shownRows(state())).toEqual([]);
    expect(state().selection.rowId).toBeNull();
    setName('another');
    expect(state().selection.rowId).toBeNull();
    setOnlyAttention(false);
    expect(state().selection.rowId).toBe('r1');
  });

  test('a row that is mended is shown until another one is picked', () => {
    findIn('r2', 'r5');
    setOnlyAttention(true);
    selectRow('r2');
    setCell('r2', 'opening_w', '18');
    findIn('r5');
    expect(shownRows(state()).map(({ id }) => id)).toEqual(['r2', 'r5']);
    selectRow('r5');
    expect(shownRows(state()).map(({ id }) => id)).toEqual(['r5']);
  });

  test('pasteCells writes into the rows that are shown and tells how many rows did not fit', () => {
    findIn('r2', 'r5');
    setOnlyAttention(true);
    const before = notes();
    expect(pasteCells('r2', 'note', [['a', 'off'], ['b'], ['c']], ['note'])).toEqual({ rows: 1, cells: 1 });
    expect(notes()).toEqual(before.with(1, 'a').with(4, 'b'));
    setOnlyAttention(false);
    expect(pasteCells('r5', 'note', [['a'], ['b'], ['c']])).toEqual({ rows: 0, cells: 0 });
    expect(state().draft.rows).toHaveLength(7);
  });

  test('an empty order takes pasted cells, and its first row is picked', () => {
    openDraft({ ...draft, rows: [] }, { name: null, handle: null });
    pasteCells(null, 'cabinet', [['B1'], ['B2']]);
    expect(state().draft.rows).toHaveLength(2);
    expect(state().selection.rowId).toBe('r1');
  });
});

describe('how things are shown', () => {
  test('toggles, and a stage is shown on the bench; none of it is a step of undo', () => {
    toggleTheme();
    toggleViewUnit();
    useProgram.setState({ view: { ...state().view, page: 'machine' } });
    setStage('cabinet');
    expect(state().view).toMatchObject({ page: 'bench', stage: 'cabinet', theme: 'dark', unit: 'mm' });
    expect(canUndo(state())).toBe(false);
  });
});
