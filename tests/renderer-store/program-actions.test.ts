import { beforeEach, describe, expect, test } from 'vitest';
import { openDraft, selectRow, setCell } from '../../renderer/store/changes.ts';
import { combineActions, PROGRAM_ACTIONS, type ProgramAction } from '../../renderer/store/program-actions.ts';
import { actionFor, ariaShortcut, matchesShortcut, shortcutText } from '../../renderer/store/shortcuts.ts';
import { useProgram } from '../../renderer/store/use-program.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';

const keys = (key: string, held: string = '') => ({
  key,
  ctrlKey: held.includes('c'),
  metaKey: held.includes('m'),
  altKey: held.includes('a'),
  shiftKey: held.includes('s'),
});

const action = (id: string): ProgramAction => {
  const found = PROGRAM_ACTIONS.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`there is no action ${id}`);
  return found;
};

const state = () => useProgram.getState();

const started = state();

beforeEach(() => {
  useProgram.setState(started, true);
  openDraft(firstRows(demoDraft(), 3), { name: null, handle: null });
});

describe('PROGRAM_ACTIONS', () => {
  test('have ids and shortcuts of their own, and labels in sentence case', () => {
    expect(combineActions(PROGRAM_ACTIONS)).toEqual(PROGRAM_ACTIONS);
    for (const { label } of PROGRAM_ACTIONS) expect(label).toMatch(/^[A-Z][a-z ]+$/);
  });

  test('every one that is enabled changes the state when it is performed', () => {
    selectRow('r2');
    for (const { id, enabled, perform, checked } of PROGRAM_ACTIONS) {
      const before = state();
      if (!enabled(before)) continue;
      perform();
      // Going where one is already changes nothing but the object.
      expect([id, state() === before && checked?.(before) !== true]).toEqual([id, false]);
    }
  });

  test('undo and redo are enabled, and say what they do, when there is something', () => {
    expect([action('edit.undo').enabled(state()), action('edit.redo').enabled(state())]).toEqual([
      false,
      false,
    ]);
    setCell('r1', 'note', 'a');
    expect(action('edit.undo').enabled(state())).toBe(true);
    expect(action('edit.undo').detail?.(state())).toBe('change note of row 1');
    action('edit.undo').perform();
    expect(action('edit.redo').detail?.(state())).toBe('change note of row 1');
  });

  test('those of a row need one', () => {
    openDraft({ ...demoDraft(), rows: [] }, { name: null, handle: null });
    for (const id of ['order.duplicate-row', 'order.remove-row', 'order.move-row-up', 'order.next-row']) {
      expect([id, action(id).enabled(state())]).toEqual([id, false]);
    }
    action('order.remove-row').perform();
    action('order.add-row').perform();
    expect(state().draft.rows).toHaveLength(1);
  });

  test('go to pages and stages, and tell where they are', () => {
    action('go.machine').perform();
    expect(action('go.machine').checked?.(state())).toBe(true);
    action('stage.part').perform();
    expect(action('go.machine').checked?.(state())).toBe(false);
    expect(action('stage.part').checked?.(state())).toBe(true);
    action('view.unit').perform();
    expect(action('view.unit').checked?.(state())).toBe(true);
  });
});

describe('combineActions', () => {
  test('throws when two actions have one id or one shortcut', () => {
    const undo = action('edit.undo');
    expect(() => combineActions(PROGRAM_ACTIONS, [{ ...undo, shortcut: null }])).toThrow('edit.undo');
    expect(() => combineActions(PROGRAM_ACTIONS, [{ ...undo, id: 'file.print' }])).toThrow('Mod+Z');
  });
});

describe('shortcuts', () => {
  test('matchesShortcut wants exactly the keys, Cmd for Mod on a Mac', () => {
    expect(matchesShortcut('Mod+Z', keys('z', 'c'), false)).toBe(true);
    expect(matchesShortcut('Mod+Z', keys('z', 'm'), false)).toBe(false);
    expect(matchesShortcut('Mod+Z', keys('z', 'm'), true)).toBe(true);
    expect(matchesShortcut('Mod+Z', keys('z', 'c'), true)).toBe(false);
    expect(matchesShortcut('Mod+Z', keys('Z', 'cs'), false)).toBe(false);
    expect(matchesShortcut('Mod+Shift+Z', keys('Z', 'cs'), false)).toBe(true);
    expect(matchesShortcut('F8', keys('F8'), false)).toBe(true);
    expect(matchesShortcut('F8', keys('F8', 'a'), false)).toBe(false);
  });

  test('actionFor leaves some to a field that somebody types in', () => {
    const down = keys('ArrowDown', 'c');
    expect(actionFor(PROGRAM_ACTIONS, down, { isMac: false, typing: false })?.id).toBe('order.next-row');
    expect(actionFor(PROGRAM_ACTIONS, down, { isMac: false, typing: true })).toBeUndefined();
    expect(actionFor(PROGRAM_ACTIONS, keys('q'), { isMac: false, typing: false })).toBeUndefined();
  });

  test('shortcutText and ariaShortcut say them as each system does', () => {
    expect(shortcutText('Mod+Shift+Z', false)).toBe('Ctrl+Shift+Z');
    expect(shortcutText('Mod+Shift+Z', true)).toBe('⇧⌘Z');
    expect(shortcutText('Alt+ArrowUp', false)).toBe('Alt+↑');
    expect(shortcutText('F8', true)).toBe('F8');
    expect(ariaShortcut('Mod+Shift+Z', false)).toBe('Control+Shift+Z');
    expect(ariaShortcut('Mod+Shift+Z', true)).toBe('Meta+Shift+Z');
  });
});
