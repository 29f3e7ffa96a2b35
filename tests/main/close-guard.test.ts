import { setImmediate as soon } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { closeGuard, type CloseChoice } from '../../electron/main/close-guard.ts';

/** A guard whose questions stand until they are answered. */
function guarded() {
  const calls: string[] = [];
  let answer: (choice: CloseChoice) => void = () => undefined;
  const guard = closeGuard({
    ask: (name) => {
      calls.push(`ask ${name}`);
      return new Promise((resolve) => {
        answer = resolve;
      });
    },
    save: () => calls.push('save'),
    close: () => calls.push('close'),
  });
  return {
    guard,
    calls,
    choose: async (choice: CloseChoice): Promise<void> => {
      answer(choice);
      await soon();
    },
  };
}

const UNSAVED = { unsaved: true, name: 'kitchen' };
const SAVED = { unsaved: false, name: 'kitchen' };

describe('closeGuard', () => {
  test('lets a window close that holds nothing unsaved', () => {
    const { guard, calls } = guarded();
    expect(guard.mayClose()).toBe(true);
    guard.changed(UNSAVED);
    guard.changed(SAVED);
    expect(guard.mayClose()).toBe(true);
    expect(calls).toEqual([]);
  });

  test('asks once, however often the window is told to close', () => {
    const { guard, calls } = guarded();
    guard.changed(UNSAVED);
    expect([guard.mayClose(), guard.mayClose()]).toEqual([false, false]);
    expect(calls).toEqual(['ask kitchen']);
  });

  test('save: saves, and closes when the work is saved', async () => {
    const { guard, calls, choose } = guarded();
    guard.changed(UNSAVED);
    guard.mayClose();
    await choose('save');
    expect(calls).toEqual(['ask kitchen', 'save']);
    guard.changed(SAVED);
    expect(calls).toEqual(['ask kitchen', 'save', 'close']);
    expect(guard.mayClose()).toBe(true);
  });

  test('discard: closes without a question, but asks again about what is done if the window stays', async () => {
    const { guard, calls, choose } = guarded();
    guard.changed(UNSAVED);
    guard.mayClose();
    await choose('discard');
    expect(guard.mayClose()).toBe(true);
    guard.changed(UNSAVED);
    expect(guard.mayClose()).toBe(false);
    expect(calls).toEqual(['ask kitchen', 'close', 'ask kitchen']);
  });

  test('save that comes to nothing: stays open, also when the work is saved later', async () => {
    const { guard, calls, choose } = guarded();
    guard.changed(UNSAVED);
    guard.mayClose();
    await choose('save');
    guard.notSaved();
    guard.changed(SAVED);
    expect(calls).toEqual(['ask kitchen', 'save']);
  });

  test('discard: closes with the work unsaved', async () => {
    const { guard, calls, choose } = guarded();
    guard.changed(UNSAVED);
    guard.mayClose();
    await choose('discard');
    expect(calls).toEqual(['ask kitchen', 'close']);
    expect(guard.mayClose()).toBe(true);
  });

  test('keep open: stays, and asks again the next time', async () => {
    const { guard, calls, choose } = guarded();
    guard.changed(UNSAVED);
    guard.mayClose();
    await choose('stay');
    expect(guard.mayClose()).toBe(false);
    expect(calls).toEqual(['ask kitchen', 'ask kitchen']);
  });

  test('work that was saved while the question stood only closes', async () => {
    const { guard, calls, choose } = guarded();
    guard.changed(UNSAVED);
    guard.mayClose();
    guard.changed(SAVED);
    await choose('save');
    expect(calls).toEqual(['ask kitchen', 'close']);
  });
});
