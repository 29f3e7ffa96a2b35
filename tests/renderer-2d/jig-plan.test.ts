import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bargains } from '../../core/jigs/sharing/picked-point.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import { jigSharer } from '../../core/session/jig-sharer.ts';
import type { Designed } from '../../core/session/types.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { solve } from '../jigs-cover/load-solver.ts';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft } from '../session/drafts.ts';
import { calls, change, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

/** The demo order with fronts that are each a little different, so that there is a trade to be made. */
const draft = (() => {
  const demo = demoDraft();
  const rows = demo.rows.map((row, place) => {
    // Bottoms that lap by up to 1 mm more or less.
    const lap = 12 + ((place * 7) % 11) / 10;
    return place % 2 === 0 ? row : { ...row, cells: { ...row.cells, bottom: `lap ${lap} mm` } };
  });
  return { ...demo, rows };
})();
const session = createDesignSession(STROKE_FONT);
const { share, study } = jigSharer(async () => solve);
const { study: trade, refusal } = await study(session.toShare(draft));
const offered = trade === null ? [] : bargains(trade);

/** What the page looks at of a design. */
const slim = (designed: Designed) => ({
  ...designed,
  fits: Object.fromEntries(Object.entries(designed.fits).map(([id, { drawer }]) => [id, { drawer }])),
  findings: [],
  budgets: {},
  seasons: {},
  fastenings: {},
  parts: [],
  aids: [],
  jigs: designed.jigs.map((jig) => ({ ...jig, pieces: [] })),
});

async function jigPlan(sharing: JigSharing, scene: Scene = {}): Promise<Page> {
  const page = await openPage(scene);
  const designed = session.design(draft, 1, await share(session.toShare(draft), sharing));
  await show(
    page,
    'JigPlanPage',
    {
      draft: { ...draft, sharing },
      designed: slim(designed),
      study: { study: trade, refusal },
      unit: 'mm',
    },
    ['onSharing', 'onRow'],
  );
  await page.getByRole('heading', { name: 'Jig plan' }).waitFor();
  return page;
}

describe('JigPlanPage', () => {
  test('shows every bargain as a point and as a row of numbers, each its own last', async () => {
    const page = await jigPlan('fewest');
    expect(offered.length).toBeGreaterThan(2);
    expect(await page.getByRole('radio').count()).toBe(offered.length);
    const rows = page.getByRole('group', { name: 'Numbers of the chart' }).getByRole('row');
    expect(await rows.count()).toBe(1 + offered.length);
    expect(await rows.last().getByRole('rowheader').textContent()).toContain('each its own');
    expect(await page.getByRole('radio', { checked: true }).getAttribute('aria-label')).toContain(
      'the fewest',
    );
  });

  test('picks points by mouse and by arrow keys', async () => {
    const page = await jigPlan('each');
    const points = page.getByRole('radio');
    await points.first().click();
    await change(page, { draft: { ...draft, sharing: 'fewest' } });
    await page.keyboard.press('ArrowRight');
    expect(await calls(page)).toEqual([
      ['onSharing', 'fewest'],
      ['onSharing', offered[1]?.sharing],
    ]);
  });

  test('lists each jig with its drawers, and which way and how far each is adjusted', async () => {
    const page = await jigPlan('fewest');
    const designed = session.design(draft, 1, await share(session.toShare(draft), 'fewest'));
    const use = designed.uses.find(({ edge, adjustment }) => edge === 'bottom' && adjustment !== 0);
    const jig = page.locator('.jig-plan-jigs > li').filter({ hasText: new RegExp(`^${use?.jigId} `) });
    await jig.locator('summary').click();
    // Wanted more overhang at the bottom than it got: the front hangs too high.
    const way = (use?.adjustment ?? 0) > 0 ? 'down' : 'up';
    expect(await jig.textContent()).toMatch(new RegExp(`bottom edge: move the front [\\d.]+ mm ${way}`));
    await jig.getByRole('button').first().click();
    expect((await calls(page)).map(([name]) => name)).toEqual(['onRow']);
  });

  test('says in words what is proved, and when the solver is missing', async () => {
    const page = await jigPlan('fewest');
    expect(await page.getByText(/^Proved: no plan of fewer jigs/).count()).toBe(1);
    await change(page, { study: { study: null, refusal: 'The solver could not be loaded: no such file' } });
    expect(await page.getByRole('alert').textContent()).toContain('could not be loaded');
    await change(page, { study: null });
    expect(await page.getByRole('status').textContent()).toContain('being worked out');
  });

  test.each(['light', 'dark'] as const)('is right by axe in %s colours', async (theme) => {
    const page = await jigPlan(offered[1]?.sharing ?? 'fewest', { theme });
    expect(await axeFindings(page)).toEqual([]);
    const folder = process.env['SCREENS'];
    if (folder !== undefined) await page.screenshot({ path: `${folder}/jig-plan-${theme}.png` });
  });

  test('fits its window at twice the size', async () => {
    const page = await jigPlan('fewest', { zoom: 2 });
    expect(await sidewaysScroll(page)).toBeLessThanOrEqual(0);
  });
});
