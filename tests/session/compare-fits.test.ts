import { describe, expect, test } from 'vitest';
import type { Draft } from '../../core/project/draft.ts';
import { compareFits } from '../../core/session/compare-fits.ts';
import { demoDraft } from '../renderer-2d/demo-draft.ts';

const INCH = 25.4;
const { draft } = demoDraft('harbor-library');
const { standard } = draft;

const withSlide = (lift: number, source: string): Draft => {
  const { undermount } = standard.slides;
  if (undermount === undefined) throw new Error('no such slide');
  const slides = { ...standard.slides, undermount: { ...undermount, lift: { value: lift, source } } };
  return { ...draft, standard: { ...standard, slides } };
};

describe('compareFits', () => {
  test('finds nothing where nothing but a source is edited', () => {
    expect(compareFits(draft, withSlide(INCH / 2, 'the slide maker'))).toEqual({
      drawers: 36,
      changed: [],
      begun: [],
      ended: 0,
    });
  });

  test('tells each size before and after: a lift of 1/16 in more lifts every derived box', () => {
    const { changed, drawers } = compareFits(draft, withSlide((9 / 16) * INCH, 'the slide maker'));
    expect(changed).toHaveLength(drawers);
    const [first] = changed;
    expect(first?.name).toBe('Reading room / R1 / top');
    expect(first?.rowId).toBe(draft.rows[0]?.id);
    // The box is lower by what its bottom is higher: the top overhang stays.
    const told = first?.sizes.map(({ what, before, after }) => [
      what,
      Math.round((after - before) * 1e6) / 1e6,
    ]);
    expect(told).toEqual([
      ['bottom overhang', INCH / 16],
      ['box height', -INCH / 16],
    ]);
  });

  test('tells which drawers lose their fit, and with what finding', () => {
    const styles = standard.styles.map((style) =>
      style.name === 'inset bevelled' ? { ...style, name: 'bevelled' } : style,
    );
    const { changed, begun } = compareFits(draft, { ...draft, standard: { ...standard, styles } });
    expect(changed.map(({ name, fit }) => [name, fit])).toEqual([
      ['Lobby / L1 / top', 'lost'],
      ['Lobby / L1 / middle', 'lost'],
      ['Lobby / L1 / bottom', 'lost'],
    ]);
    expect(begun).toHaveLength(3);
    expect(
      begun.every(({ severity, message }) => severity === 'error' && message.includes('inset bevelled')),
    ).toBe(true);
  });

  test('counts the findings that go away', () => {
    const limits = { ...standard.limits, smallestGap: { value: 5, source: 'a test' } };
    const strict = { ...draft, standard: { ...standard, limits } };
    const { changed, ended, begun } = compareFits(strict, draft);
    expect(changed).toEqual([]);
    expect(begun).toEqual([]);
    expect(ended).toBeGreaterThan(10);
  });
});
