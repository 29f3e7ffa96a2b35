import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { cabinetElevation } from '../../core/elevation/cabinet-elevation.ts';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft, rowOf, withCell, type DemoDraft } from './demo-draft.ts';
import { calls, change, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

const harbor = demoDraft('harbor-library');

async function cabinet(demo: DemoDraft, rowId: string | null, scene: Scene = {}): Promise<Page> {
  const page = await openPage(scene);
  const { draft, designed } = demo;
  const props = {
    fits: designed.fits,
    // The view is of fits; what is told of screws and guides would mark more rows.
    findings: designed.findings.filter(({ finding }) => !/^(?:fastening|jigs)\//.test(finding.code)),
    rows: draft.rows,
    construction: draft.standard.construction,
    selection: { rowId, jigId: null, partId: null },
    unit: draft.unit,
  };
  await show(page, 'CabinetView', props, ['onSelect'], { onSelect: 'selection' });
  await page.getByRole('option').first().waitFor();
  return page;
}

const figures = (page: Page): Promise<readonly string[]> =>
  page.locator('.drawing-dimension text').allTextContents();

describe('CabinetView', () => {
  test('draws the fronts to scale, gaps included', async () => {
    // Nothing is picked: the outlines have no stroke that would count.
    const page = await cabinet(harbor, null);
    const rows = harbor.draft.rows.filter(({ cells }) => cells.cabinet === 'R1');
    const fits = rows.flatMap(({ id }) => {
      const fit = harbor.designed.fits[id];
      return fit === undefined ? [] : [{ rowId: id, fit }];
    });
    const { drawers } = cabinetElevation(fits, { construction: 'face frame', findings: [] });
    const drawn = await Promise.all(
      drawers.map((_, index) => page.locator('.cabinet-front-outline').nth(index).boundingBox()),
    );
    const [first] = drawn;
    const scale = (first?.width ?? NaN) / (drawers[0]?.front.w ?? NaN);
    expect(drawn).toHaveLength(4);
    for (const [index, box] of drawn.entries()) {
      const front = drawers[index]?.front;
      expect(box?.width).toBeCloseTo((front?.w ?? NaN) * scale, 1);
      expect(box?.height).toBeCloseTo((front?.h ?? NaN) * scale, 1);
      expect((box?.y ?? NaN) - (first?.y ?? NaN)).toBeCloseTo(
        ((front?.y ?? NaN) - (drawers[0]?.front.y ?? NaN)) * scale,
        1,
      );
    }
  });

  test('tells each gap in the unit that is shown', async () => {
    const page = await cabinet(harbor, rowOf(harbor, 'R2'));
    const inches = await figures(page);
    expect(inches.filter((text) => text === '3/16"')).toHaveLength(3);
    expect(inches.filter((text) => text === '1/8"')).toHaveLength(4);
    await change(page, { unit: 'mm' });
    const metric = await figures(page);
    expect(metric.filter((text) => text === '4.76 mm')).toHaveLength(3);
    expect(metric.filter((text) => /^3\.1[78] mm$/.test(text))).toHaveLength(4);
    expect(metric.join(' ')).not.toContain('"');
  });

  test('picks a drawer by the mouse, and marks it by more than a colour', async () => {
    const page = await cabinet(harbor, rowOf(harbor, 'R2'));
    const option = page.getByRole('option', {
      name: /^Drawer right bottom, full overlay, front 18 13\/32" × 12 3\/4", 2 alike, fits$/,
    });
    await option.click();
    expect(await calls(page)).toEqual([['onSelect', rowOf(harbor, 'R2', 'right bottom')]]);
    expect(await option.getAttribute('aria-selected')).toBe('true');
    expect(await page.locator('.cabinet-picked-flag').count()).toBe(1);
  });

  test('picks a drawer by the arrows, from the one that the tab key reaches', async () => {
    const page = await cabinet(harbor, rowOf(harbor, 'R2', 'left middle'));
    await page.getByRole('option', { selected: true }).focus();
    for (const key of ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'Home', 'End']) await page.keyboard.press(key);
    const picked = (await calls(page)).map(([, rowId]) => rowId);
    const names = ['right middle', 'right bottom', 'left bottom', 'left top', 'right bottom'];
    expect(picked).toEqual(names.map((name) => rowOf(harbor, 'R2', name)));
    expect(await page.locator('[role="option"][tabindex="0"]').count()).toBe(1);
  });

  test('does not pick where the picture is only moved', async () => {
    const page = await cabinet(harbor, rowOf(harbor, 'R2'));
    const front = page.locator('.cabinet-front-outline').nth(4);
    const before = await front.boundingBox();
    await page.mouse.move((before?.x ?? 0) + 40, (before?.y ?? 0) + 20);
    await page.mouse.down();
    await page.mouse.move((before?.x ?? 0) + 10, (before?.y ?? 0) + 30, { steps: 4 });
    await page.mouse.up();
    expect(await calls(page)).toEqual([]);
    expect((await front.boundingBox())?.x).toBeCloseTo((before?.x ?? NaN) - 30, 0);
  });

  test('enlarges by + and shows all again by 0', async () => {
    const page = await cabinet(harbor, rowOf(harbor, 'R1'));
    const front = page.locator('.cabinet-opening').first();
    const before = (await front.boundingBox())?.width ?? NaN;
    await page.getByRole('option', { selected: true }).focus();
    await page.keyboard.press('+');
    expect(((await front.boundingBox())?.width ?? NaN) / before).toBeCloseTo(1.4, 2);
    await page.keyboard.press('0');
    expect((await front.boundingBox())?.width).toBeCloseTo(before, 2);
  });

  test('lists the cabinets with their state; choosing one picks its first drawer', async () => {
    const page = await cabinet(harbor, null);
    const list = page.getByRole('navigation', { name: 'Cabinets' }).getByRole('button');
    expect(await list.count()).toBe(12);
    expect(await list.first().textContent()).toBe('Reading room / R1✓ 4 drawers, fits');
    expect(await list.first().getAttribute('aria-current')).toBe('true');
    await list.filter({ hasText: 'Chart room / C2' }).click();
    expect(await calls(page)).toEqual([['onSelect', rowOf(harbor, 'C2')]]);
    expect(await page.getByRole('heading', { level: 3 }).textContent()).toBe('Chart room / C2');
    expect((await figures(page)).length).toBe(16);
  });

  test('says which drawers are not drawn, and picks them all the same', async () => {
    const faulty = demoDraft('harbor-library', withCell('R1', 'upper', 'style', 'nosuch'));
    const page = await cabinet(faulty, rowOf(faulty, 'R1'));
    expect(await page.getByRole('option').count()).toBe(3);
    await page.getByRole('button', { name: 'upper' }).click();
    expect(await calls(page)).toEqual([['onSelect', rowOf(faulty, 'R1', 'upper')]]);
    const entry = page.getByRole('navigation').getByRole('button').first();
    expect(await entry.textContent()).toBe('Reading room / R1✕ 1 of 4 drawers: fault');
  });

  test('keeps all words apart in a small room at 200 %', async () => {
    const boathouse = demoDraft('boathouse-frameless');
    const page = await cabinet(boathouse, rowOf(boathouse, 'B2'), { zoom: 2, theme: 'dark' });
    expect(await sidewaysScroll(page)).toBe(0);
    const texts = page.locator('.cabinet-words text');
    const boxes = await Promise.all(
      Array.from({ length: await texts.count() }, (_, index) => texts.nth(index).boundingBox()),
    );
    expect(boxes.length).toBeGreaterThan(5);
    for (const [index, a] of boxes.entries()) {
      for (const b of boxes.slice(index + 1)) {
        if (a === null || b === null) continue;
        const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
        const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
        // The boxes of glyphs are taller than what is seen of them.
        expect(across > 1 && down > 4).toBe(false);
      }
    }
  });

  test.for(['light', 'dark'] as const)('has nothing that axe finds, %s', async (theme) => {
    const page = await cabinet(harbor, rowOf(harbor, 'C2'), { theme });
    await page.getByText(/^Gaps in words/).click();
    expect(await axeFindings(page)).toEqual([]);
  });
});
