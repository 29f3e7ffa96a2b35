import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bounds } from '../../core/geometry/measure.ts';
import { readMachine } from '../jigs/setups.ts';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft, type DemoDraft } from './demo-draft.ts';
import { calls, change, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

const laser = demoDraft('harbor-library');
const router = demoDraft('harbor-library', (draft) => ({ ...draft, machine: readMachine('router') }));

async function part(demo: DemoDraft, partId: string, unit: 'in' | 'mm', scene: Scene = {}): Promise<Page> {
  const page = await openPage(scene);
  const props = {
    parts: demo.designed.parts,
    partId,
    detail: demo.session.part(partId),
    machine: demo.draft.machine,
    unit,
  };
  await show(page, 'PartView', props, ['onSelect'], { onSelect: 'partId' });
  await page.getByRole('heading', { name: new RegExp(`${partId.split('-')[0]},`) }).waitFor();
  await page.locator('.parts-body').waitFor();
  return page;
}

const outline = (demo: DemoDraft, partId: string) => {
  const features = demo.session.part(partId)?.part.features ?? [];
  return bounds(
    ...features.filter(({ operation }) => operation === 'cut-outer').map(({ contour }) => contour),
  );
};

const readings = async (page: Page): Promise<readonly (string | null)[]> =>
  Promise.all([0, 1, 2].map((index) => page.locator('.parts-reading dd').nth(index).textContent()));

describe('PartView', () => {
  test('dimensions the part over all, and places its holes, in the unit that is shown', async () => {
    const page = await part(laser, 'B1-plate', 'mm');
    const { min, max } = outline(laser, 'B1-plate');
    const texts = await page.locator('.drawing-dimension text').allTextContents();
    expect(texts.map((text) => Number.parseFloat(text))).toEqual([
      Number((max.x - min.x).toFixed(2)),
      Number((max.y - min.y).toFixed(2)),
    ]);
    const rows = page.getByRole('region', { name: 'Holes' }).getByRole('row');
    const round = rows.filter({ hasText: '⌀' });
    const circles = (laser.session.part('B1-plate')?.part.features ?? []).flatMap(({ contour }) =>
      contour.kind === 'circle' ? [contour] : [],
    );
    expect(await round.count()).toBe(circles.length);
    const [circle] = circles;
    const cells = await round.first().getByRole('cell').allTextContents();
    expect(cells.slice(1).map((text) => Number.parseFloat(text.replace('⌀', '')))).toEqual(
      [2 * (circle?.radius ?? NaN), (circle?.center.x ?? NaN) - min.x, (circle?.center.y ?? NaN) - min.y].map(
        (mm) => Number(mm.toFixed(2)),
      ),
    );
    await change(page, { unit: 'in' });
    expect(
      (await page.locator('.drawing-dimension text').allTextContents()).every((text) => text.endsWith('"')),
    ).toBe(true);
  });

  test('gives each operation a line of its own, with layer and word in the legend', async () => {
    const page = await part(router, 'B1-plate', 'in');
    const legend = page.getByRole('region', { name: 'Lines' }).getByRole('listitem');
    expect(await legend.allTextContents()).toEqual([
      'CUT_OUTSIDE cut, outside, 1',
      'CUT_INSIDE cut, inside, 1',
      expect.stringMatching(/^DRILL drill, \d+$/),
      expect.stringMatching(/^ENGRAVE engrave, \d+$/),
    ]);
    const styles = await legend.locator('path').evaluateAll((paths) =>
      paths.map((path) => {
        const style: Record<string, string> = Reflect.get(globalThis, 'getComputedStyle')(path);
        return `${style['strokeDasharray']} ${style['strokeWidth']}`;
      }),
    );
    expect(new Set(styles).size).toBe(styles.length);
  });

  test('shows the path of the cut on demand, half the kerf outside the part', async () => {
    const page = await part(laser, 'B1-key-10', 'mm');
    expect(await page.locator('.parts-line-path').count()).toBe(0);
    const toggle = page.getByRole('button', { name: 'Path of the cut' });
    await toggle.click();
    expect(await toggle.getAttribute('aria-pressed')).toBe('true');
    const boxOf = (className: string) =>
      page
        .locator(`.drawing-sheet ${className}`)
        .first()
        .evaluate((path) => {
          const { x, y, width, height }: Record<string, number> = Reflect.get(path, 'getBBox').call(path);
          return { x: x ?? NaN, y: y ?? NaN, width: width ?? NaN, height: height ?? NaN };
        });
    const [drawn, followed] = [await boxOf('.parts-line-outer'), await boxOf('.parts-line-path')];
    expect(followed.width - drawn.width).toBeCloseTo(0.2, 3);
    expect(drawn.x - followed.x).toBeCloseTo(0.1, 3);
    expect(drawn.y - followed.y).toBeCloseTo(0.1, 3);
    expect(await page.getByText(/lies half of 0.2 mm in the waste/).count()).toBe(1);
  });

  test('says that the path is the part where the machine allows for the cut', async () => {
    const page = await part(router, 'B1-plate', 'mm');
    await page.getByRole('button', { name: 'Path of the cut' }).click();
    expect(await page.getByText(/is the part itself: this profile leaves the width/).count()).toBe(1);
  });

  test('measures between two points by keys alone', async () => {
    const page = await part(laser, 'B1-key-10', 'mm');
    const { min, max } = outline(laser, 'B1-key-10');
    await page.getByRole('group', { name: /to scale/ }).focus();
    for (const key of ['n', 'Enter', 'n', 'n', 'Enter']) await page.keyboard.press(key);
    // First and third corner of a rectangle: its diagonal.
    const [w, h] = [max.x - min.x, max.y - min.y];
    const told = (await readings(page)).map((text) => Number.parseFloat(text ?? ''));
    expect(told[0]).toBeCloseTo(Math.hypot(w, h), 2);
    expect(told.slice(1)).toEqual([w, h]);
    await page.keyboard.press('Escape');
    expect(await readings(page)).toEqual(['–', '–', '–']);
  });

  test('measures by the mouse, caught by the nearest point', async () => {
    const page = await part(laser, 'B1-key-10', 'in');
    const box = await page.locator('.drawing-sheet .parts-line-outer').boundingBox();
    const surface = page.getByRole('group', { name: /to scale/ });
    const at = await surface.boundingBox();
    const click = (x: number, y: number) =>
      surface.click({
        position: { x: (box?.x ?? 0) - (at?.x ?? 0) + x, y: (box?.y ?? 0) - (at?.y ?? 0) + y },
      });
    await click(9, 7);
    await click((box?.width ?? 0) - 8, 6);
    // 10 mm across, 0 up: 10 / 25.4 in.
    expect(await readings(page)).toEqual(['0.3937"', '0.3937"', '0"']);
  });

  test('measures by the buttons, and tells each point in words', async () => {
    const page = await part(laser, 'B1-key-10', 'mm');
    await page.getByRole('button', { name: 'Next point' }).click();
    expect(await page.getByText('Point 1 of 8: corner, 0 mm from left, 0 mm from bottom').count()).toBe(1);
    await page.getByRole('button', { name: 'Pick this point' }).click();
    await page.getByRole('button', { name: 'Previous point' }).click();
    await page.getByRole('button', { name: 'Pick this point' }).click();
    // The last point is the middle of the left side, 18 mm high.
    expect(await readings(page)).toEqual(['9 mm', '0 mm', '9 mm']);
    expect(await page.getByText(/Point 8 of 8: middle of a side/).count()).toBe(1);
  });

  test('enlarges about the pointer by the wheel, and moves by the arrows', async () => {
    const page = await part(laser, 'B1-plate', 'mm');
    const outer = page.locator('.parts-body');
    const surface = page.getByRole('group', { name: /to scale/ });
    const before = await outer.boundingBox();
    const corner = { x: before?.x ?? NaN, y: before?.y ?? NaN };
    await page.mouse.move(corner.x, corner.y);
    await page.mouse.wheel(0, -400);
    await expect
      .poll(async () => (await outer.boundingBox())?.width ?? 0)
      .toBeGreaterThan((before?.width ?? 0) * 2);
    const larger = await outer.boundingBox();
    expect(Math.abs((larger?.x ?? NaN) - corner.x)).toBeLessThan(2);
    expect(Math.abs((larger?.y ?? NaN) - corner.y)).toBeLessThan(2);
    await surface.focus();
    await page.keyboard.press('ArrowLeft');
    expect((await outer.boundingBox())?.x).toBeGreaterThan(larger?.x ?? NaN);
    await page.keyboard.press('0');
    expect((await outer.boundingBox())?.width).toBeCloseTo(before?.width ?? NaN, 1);
  });

  test('lists the parts of each jig with copies, material and what the jig sets', async () => {
    const page = await part(laser, 'B1-plate', 'mm');
    const jig = page.getByRole('region', { name: 'Jig B1', exact: true });
    expect(await jig.getByRole('paragraph').textContent()).toBe('Sets bottom 12.7 mm');
    const lip = laser.designed.parts.find(({ id }) => id === 'B1-lip');
    const button = jig.getByRole('button', { name: /^lip/ });
    expect(await button.textContent()).toBe(`lip${lip?.copies} × 6 mm birch plywood`);
    await button.click();
    expect(await calls(page)).toEqual([['onSelect', 'B1-lip']]);
    // Its contours have not come yet.
    expect(await page.getByText('Drawing bottom fence B1, lip …').count()).toBe(1);
  });

  test('dimensions the place of a hole that is picked in the table', async () => {
    const page = await part(laser, 'B1-plate', 'mm');
    const row = page.getByRole('row').nth(1);
    const [, , fromLeft, fromBottom] = await row.getByRole('cell').allTextContents();
    await row.getByRole('button').click();
    const texts = await page.locator('.drawing-dimension text').allTextContents();
    expect(texts.slice(2)).toEqual([fromLeft, fromBottom]);
  });

  test.for([
    ['light', 1],
    ['dark', 2],
  ] as const)('has nothing that axe finds, %s at %i times the size', async ([theme, zoom]) => {
    const page = await part(laser, 'B1-plate', 'in', { theme, zoom });
    expect(await sidewaysScroll(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });
});
