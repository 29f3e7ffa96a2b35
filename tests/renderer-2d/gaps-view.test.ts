import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { dialIn } from '../../core/fit/dial-in/dial-in.ts';
import type { SeenGaps } from '../../core/fit/dial-in/types.ts';
import { orderRework } from '../../core/gap-view/order-rework.ts';
import { formatLength } from '../../core/units/format-length.ts';
import type { Draft } from '../../core/project/draft.ts';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft, rowOf, type DemoDraft } from './demo-draft.ts';
import { calls, change, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

/** The same order with fronts of solid wood. */
const inSolidWood = (draft: Draft): Draft => {
  const { standard } = draft;
  const wood = { ...standard.front.wood, slab: { value: 'solid' as const, source: 'a test' } };
  return { ...draft, standard: { ...standard, front: { ...standard.front, wood } } };
};

const harbor = demoDraft('harbor-library', inSolidWood);
const boathouse = demoDraft('boathouse-frameless');

const insetOf = ({ designed }: DemoDraft): string => {
  const found = Object.entries(designed.budgets).find(([, { fit }]) => fit.drawer.style === 'inset');
  if (found === undefined) throw new Error('the demo order has no inset front');
  return found[0];
};

/** 1 mm too far left and low at the left: mm that somebody read. */
const READ: SeenGaps = { topLeft: { side: 1.4, end: 3.4 }, topRight: { side: 3.4, end: 2.4 } };

interface Shown {
  readonly seen?: SeenGaps;
  readonly unit?: 'in' | 'mm';
  readonly scene?: Scene;
}

async function gaps(demo: DemoDraft, rowId: string, { seen = {}, unit = 'mm', scene = {} }: Shown = {}) {
  const page = await openPage(scene);
  const { draft, designed } = demo;
  const props = {
    rowId,
    budget: designed.budgets[rowId] ?? null,
    uses: designed.uses.filter((use) => use.rowId === rowId),
    season: designed.seasons[rowId] ?? null,
    standard: draft.standard,
    unit,
    rework: { state: 'counted', answer: orderRework(designed.budgets, draft.standard) },
    notes: { seen, stood: 'at 0' },
  };
  await show(page, 'GapsView', props, ['onNotes', 'onCount'], { onNotes: 'notes' });
  await page.getByRole('region', { name: 'The whole order' }).waitFor();
  return page;
}

const boxOf = async (page: Page, place: string, index: number) => {
  const box = await page.locator(place).nth(index).boundingBox();
  if (box === null) throw new Error(`${place} is not seen`);
  return box;
};

describe('GapsView', () => {
  test('draws each edge that has a gap to one scale, with the figures of the budget', async () => {
    const row = insetOf(harbor);
    const budget = harbor.designed.budgets[row];
    const page = await gaps(harbor, row);
    const panel = page.getByRole('region', { name: 'Does it come in?' });
    const bars = panel.locator('.gaps-bars').getByRole('listitem');
    expect(await bars.count()).toBe(4);
    for (const [index, edge] of (['left', 'right', 'top', 'bottom'] as const).entries()) {
      const one = budget?.edges[edge];
      const figure = (mm: number) => `${mm < 0 ? '−' : '+'}${formatLength(Math.abs(mm), 'mm')}`;
      const text = (await bars.nth(index).textContent()) ?? '';
      expect(text).toContain(
        `Margin ${figure(one?.margin?.worst ?? NaN)} at worst, ${figure(one?.margin?.likely ?? NaN)} likely`,
      );
      const [most] = one?.shares ?? [];
      expect(text).toContain(`${Math.round(100 * (most?.share ?? NaN))} %, comes from the ${most?.source}.`);
      // Pixels for each mm are those of the first edge's adjuster.
      const first = await boxOf(page, '.gaps-available', 0);
      const range = budget?.edges.left.available ?? { least: NaN, most: NaN };
      const perMm = first.width / (range.most - range.least);
      const worst = await boxOf(page, '.gaps-worst', index);
      // A box has its outline of 1 px in it.
      expect(Math.abs(worst.width - 2 * (one?.spread.worst ?? NaN) * perMm)).toBeLessThan(2.5);
    }
  });

  test('says in a sentence whether the front comes in, and where to start its adjusters', async () => {
    const row = insetOf(harbor);
    const budget = harbor.designed.budgets[row];
    const page = await gaps(harbor, row, { unit: 'in' });
    const panel = page.getByRole('region', { name: 'Does it come in?' });
    expect([budget?.reachableAtWorst, budget?.reachableLikely]).toEqual([false, true]);
    const verdict = panel.locator('.gaps-verdict');
    expect(await verdict.textContent()).toContain('Likely comes in with the adjusters alone');
    expect(await verdict.textContent()).toContain(
      formatLength(Math.abs(budget?.margin?.worst.slack ?? NaN), 'in'),
    );
    expect(await panel.locator('.gaps-start li').allTextContents()).toEqual([
      `Raise the left side by ${formatLength(budget?.start.heightLeft ?? NaN, 'in')}.`,
      `Raise the right side by ${formatLength(budget?.start.heightRight ?? NaN, 'in')}.`,
    ]);
    await change(page, { unit: 'mm' });
    expect(await panel.textContent()).not.toContain('"');
  });

  test('says which edges lap, in a drawer with one gap and in one with none', async () => {
    const page = await gaps(boathouse, 'r1');
    expect(await page.locator('.gaps-bar').count()).toBe(1);
    expect(await page.getByText('laps its members at left, right and top: no gap').count()).toBe(1);
    const lapped = rowOf(harbor, harbor.draft.rows[0]?.cells.cabinet ?? '');
    await gaps(harbor, lapped);
    expect(await page.locator('.gaps-bar').count()).toBe(0);
    expect(await page.getByText('laps its members all round').count()).toBe(1);
    expect(await page.getByText('so it has no gap of its own to read').count()).toBe(1);
  });

  test("tells the order's rework and the row's share, and counts again when asked", async () => {
    const page = await gaps(harbor, insetOf(harbor));
    const panel = page.getByRole('region', { name: 'The whole order' });
    const rework = orderRework(harbor.designed.budgets, harbor.draft.standard)?.rework;
    expect(await panel.textContent()).toContain(
      `Of ${rework?.fronts} fronts, ${rework?.expected.toFixed(1)} are expected to need rework (`,
    );
    expect(await panel.getByText('% of fronts like this one come in').count()).toBe(1);
    await panel.getByRole('button', { name: 'Count again' }).focus();
    await page.keyboard.press('Enter');
    expect((await calls(page)).map(([name]) => name)).toEqual(['onCount']);
    await change(page, { rework: { state: 'earlier', answer: { rework, reach: {} } } });
    expect(await panel.getByText('Of the order as it was before').count()).toBe(1);
    await change(page, { rework: { state: 'counting', answer: null } });
    expect(await panel.getByRole('button').isDisabled()).toBe(true);
  });

  test('takes readings by keys alone: fractions, millimetres, sums, and a reason for what is none', async () => {
    const page = await gaps(harbor, insetOf(harbor), { unit: 'in' });
    const corner = page.getByRole('group', { name: 'Top left', exact: true });
    const side = corner.getByLabel('Gap at the left side');
    await side.focus();
    expect(await page.locator('.gaps-read-reached').count()).toBe(1);
    await page.keyboard.type('1/16 + 1/32');
    await page.keyboard.press('Tab');
    await page.keyboard.type('2.5 mm');
    await page.keyboard.press('Enter');
    expect((await calls(page)).at(-1)).toEqual([
      'onNotes',
      { seen: { topLeft: { side: 2.38125, end: 2.5 } }, stood: 'at 0' },
    ]);
    expect(await side.inputValue()).toBe('3/32"');
    await page.keyboard.press('Tab');
    await page.keyboard.type('wide');
    await page.keyboard.press('Enter');
    expect(await page.getByText(/^Fault: words are not read/).count()).toBe(1);
    await page.keyboard.press('Escape');
    expect(await page.getByText(/^Fault/).count()).toBe(0);
    await side.fill('');
    await side.press('Enter');
    await page.getByRole('combobox', { name: 'The adjusters stood' }).selectOption('as started');
    expect((await calls(page)).at(-1)).toEqual([
      'onNotes',
      { seen: { topLeft: { end: 2.5 } }, stood: 'as started' },
    ]);
    // A refused text goes with the readings.
    await side.fill('wide');
    await page.getByRole('button', { name: 'Clear the readings' }).click();
    expect(await side.inputValue()).toBe('');
    expect(await page.getByText(/^Fault/).count()).toBe(0);
    expect((await calls(page)).at(-1)).toEqual(['onNotes', { seen: {}, stood: 'at 0' }]);
    expect(await page.getByText('Nothing was read yet.').count()).toBe(1);
  });

  test('answers readings with the moves, the gaps after them and what stays, as the helper works them out', async () => {
    const row = insetOf(harbor);
    const fit = harbor.designed.fits[row];
    if (fit === undefined) throw new Error('the row has no fit');
    const page = await gaps(harbor, row, { seen: READ });
    const answer = dialIn(READ, { ...fit, unit: 'mm' }, harbor.draft.standard).value;
    const panel = page.getByRole('region', { name: 'Turn these, in this order' });
    expect(answer?.moves.length).toBeGreaterThan(1);
    expect(await panel.locator('.gaps-moves li').allTextContents()).toEqual(
      answer?.moves.map(({ words }) => words),
    );
    const rows = panel.getByRole('row');
    expect(await rows.count()).toBe(1 + 4);
    const mm = (value: number | undefined) => formatLength(value ?? NaN, 'mm');
    expect(await rows.nth(1).getByRole('cell').allTextContents()).toEqual([
      mm(1.4),
      mm(answer?.after.topLeft?.side),
      mm(fit.gaps.left ?? NaN),
    ]);
    for (const { words } of answer?.incurable ?? []) expect(await panel.textContent()).toContain(words);
  });

  test('tables the gaps of solid wood over the year, and says that a panel stays put', async () => {
    const row = insetOf(harbor);
    const season = harbor.designed.seasons[row];
    const page = await gaps(harbor, row);
    const panel = page.getByRole('region', { name: 'Over the year' });
    const top = panel.getByRole('row').filter({ has: page.getByRole('rowheader', { name: 'top' }) });
    const mm = (value: number | null | undefined) => formatLength(value ?? NaN, 'mm');
    expect(await top.getByRole('cell').allTextContents()).toEqual([
      mm(season?.dry.gaps.top),
      mm(season?.fit.gaps.top),
      mm(season?.damp.gaps.top),
      'as it is',
    ]);
    expect(season?.damp.gaps.top).toBeLessThan(season?.fit.gaps.top ?? NaN);
    await gaps(boathouse, insetOf(boathouse));
    expect(await panel.getByText('keeps its size, and its gaps').count()).toBe(1);
    expect(await panel.getByRole('table').count()).toBe(0);
  });

  test('without a drawer it tells how to pick one, and still counts the order', async () => {
    const page = await gaps(harbor, 'none');
    expect(await page.getByText('Pick a drawer without faults').count()).toBe(1);
    expect(await page.getByRole('region').count()).toBe(1);
  });

  test.for([
    ['light', 1],
    ['dark', 2],
  ] as const)('has nothing that axe finds, %s at %i times the size', async ([theme, zoom]) => {
    const page = await gaps(harbor, insetOf(harbor), { seen: READ, scene: { theme, zoom } });
    expect(await sidewaysScroll(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });
});
