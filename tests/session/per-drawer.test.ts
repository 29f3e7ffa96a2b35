import { expect, test } from 'vitest';
import { fitDraft } from '../../core/session/compare-fits.ts';
import { perDrawer } from '../../core/session/per-drawer.ts';
import { readStandard } from '../rules/read-standard.ts';
import { workroomRows } from './drafts.ts';

test('perDrawer works a drawer out once under a standard, and anew under another and back', () => {
  const [one, other] = [...fitDraft(workroomRows()).fits.values()];
  if (one === undefined || other === undefined) throw new RangeError('the rows have no drawers');
  const [standard, another] = [
    readStandard('face-frame-undermount.json'),
    readStandard('frameless-undermount.json'),
  ];
  const asked: unknown[] = [];
  const ask = perDrawer((fit, under) => {
    asked.push([fit.drawer.row, under.name]);
    return { fit, under };
  });
  expect(ask(one, standard)).toBe(ask(one, standard));
  expect(ask(other, standard).fit).toBe(other);
  expect(ask(one, another).under).toBe(another);
  expect(ask(one, standard)).toEqual({ fit: one, under: standard });
  // The same drawer, but another object: nothing says that it is the same.
  expect(ask({ ...one }, standard).fit).toEqual(one);
  const [a, b] = [one.drawer.row, other.drawer.row];
  expect(asked).toEqual([
    [a, standard.name],
    [b, standard.name],
    [a, another.name],
    [a, standard.name],
    [a, standard.name],
  ]);
});
