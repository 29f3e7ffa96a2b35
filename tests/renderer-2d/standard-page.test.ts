import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { axeFindings } from '../readers/axe.ts';
import { demoDraft } from './demo-draft.ts';
import { calls, change, pagesOfFile, show, sidewaysScroll, type Scene } from './harness.ts';

const openPage = pagesOfFile();

const INCH = 25.4;
const { draft } = demoDraft('harbor-library');
const CALLBACKS = ['onApply', 'onOpen', 'onSave'];

async function standardPage(unit: 'in' | 'mm' = 'in', scene: Scene = {}): Promise<Page> {
  const page = await openPage(scene);
  await show(page, 'StandardPage', { standard: draft.standard, draft, unit }, CALLBACKS, {
    onApply: 'standard',
  });
  await page.getByRole('heading', { name: 'Shop standard' }).waitFor();
  return page;
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const changes = (page: Page) => page.getByRole('region', { name: 'What changes in the order' });

/** As far as these tests look at it. */
const appliedSchema = z.object({
  unit: z.string(),
  slide: z.string(),
  slides: z.record(
    z.string(),
    z.object({
      lift: z.object({ value: z.number(), source: z.string() }),
      adjusters: z.record(z.string(), z.looseObject({ least: z.object({ value: z.number() }) })),
    }),
  ),
  front: z.object({
    wood: z.looseObject({
      species: z.object({ value: z.string() }),
      slab: z.object({ value: z.string() }),
    }),
  }),
  species: z.record(z.string(), z.object({ softwood: z.boolean(), radial: z.object({ value: z.number() }) })),
  fastening: z.looseObject({
    stock: z.array(z.looseObject({ name: z.string(), gauge: z.number(), head: z.string() })),
    bits: z.array(z.object({ value: z.number() })),
    pull: z.object({ value: z.number() }),
    safety: z.object({ value: z.number() }),
    driver: z.array(z.looseObject({ name: z.string(), radius: z.object({ value: z.number() }) })),
  }),
  pulls: z.record(z.string(), z.looseObject({ holes: z.number() })),
  styles: z.array(z.object({ name: z.string() })),
  cabinetKinds: z.record(
    z.string(),
    z.object({ members: z.record(z.string(), z.object({ value: z.number() })) }),
  ),
});

async function applied(page: Page): Promise<z.infer<typeof appliedSchema>> {
  await page.getByRole('button', { name: 'Apply to the order' }).click();
  const [call] = await calls(page);
  expect(call?.[0]).toBe('onApply');
  return appliedSchema.parse(call?.[1]);
}

describe('StandardPage', () => {
  test('shows what an edit changes before it is applied: drawer, old, new', async () => {
    const page = await standardPage();
    await field(page, 'Lift').fill('9/16');
    await changes(page).getByText('36 of 36 drawers change').waitFor();
    // Lift 1/2, overlay 1/8 and start-low 1/16 in of the uppermost drawer.
    const cells = await changes(page).getByRole('row').nth(1).getByRole('cell').allTextContents();
    expect(cells).toEqual(['bottom overhang', '11/16"', '3/4"']);
    expect(await calls(page)).toEqual([]);
    const standard = await applied(page);
    expect(standard.slides['undermount']?.lift.value).toBeCloseTo((9 / 16) * INCH, 9);
    await changes(page).getByText('Nothing is edited.', { exact: false }).waitFor();
    expect(await field(page, 'Lift').inputValue()).toBe('9/16 in');
  });

  test('drops an edit', async () => {
    const page = await standardPage();
    await field(page, 'Stile, or side panel').first().fill('2');
    await page.getByRole('button', { name: 'Drop the edit' }).click();
    expect(await field(page, 'Stile, or side panel').first().inputValue()).toBe('1-1/2 in');
    expect(await page.getByRole('button', { name: 'Apply to the order' }).isDisabled()).toBe(true);
  });

  test("shows the parser's own fault at its field, and cannot be applied meanwhile", async () => {
    const page = await standardPage();
    const edge = field(page, 'Left edge at the outside');
    await edge.fill('lap x');
    expect(await edge.getAttribute('aria-invalid')).toBe('true');
    const id = (await edge.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`[id="${id}"]`).textContent()).toMatch(
      /^Fault: “lap x” is refused: the overlay/,
    );
    expect(await changes(page).getByText('1 fault').count()).toBe(1);
    expect(await page.getByRole('button', { name: 'Apply to the order' }).isDisabled()).toBe(true);
    await field(page, 'Source of Left edge at the outside').fill(' ');
    await changes(page).getByText('2 faults').waitFor();
  });

  test('edits the source of a value, which changes no drawer', async () => {
    const page = await standardPage();
    await field(page, 'Source of Lift').fill('sheet of the slide maker, 2025');
    await changes(page).getByText('No size of the 36 drawers changes').waitFor();
    expect((await applied(page)).slides['undermount']?.lift).toEqual({
      value: INCH / 2,
      source: 'sheet of the slide maker, 2025',
    });
  });

  test('is told in the unit that is shown, what is half typed included', async () => {
    const page = await standardPage();
    await field(page, 'Lift').fill('1/2 + 1/16');
    await field(page, 'Top edge at the outside').fill('lap x');
    await change(page, { unit: 'mm' });
    expect(await field(page, 'Lift').inputValue()).toBe('14.2875 mm');
    expect(await field(page, 'Left edge at the outside').inputValue()).toBe('inset 2.38125 mm');
    expect(await field(page, 'Top edge at the outside').inputValue()).toBe('lap x');
    // A bare number is now in millimetres.
    await field(page, 'Top edge at the outside').fill('lap 10');
    await field(page, 'Lift').fill('14');
    const standard = await applied(page);
    expect(standard.slides['undermount']?.lift.value).toBe(14);
    expect(standard.unit).toBe('in');
  });

  test('renames a slide with all that use it', async () => {
    const page = await standardPage();
    await field(page, 'Name of the slide').fill('soft close');
    await page.keyboard.press('Enter');
    await changes(page).getByText('No size of the 36 drawers changes').waitFor();
    const standard = await applied(page);
    expect(standard.slide).toBe('soft close');
    expect(Object.keys(standard.slides)).toEqual(['soft close']);
  });

  test('adds a style as a copy, and tells which drawers a renamed one loses', async () => {
    const page = await standardPage();
    await page.getByRole('button', { name: 'Add a copy of this style' }).click();
    expect(await field(page, 'Name of the style').inputValue()).toBe('inset 2');
    await changes(page).getByText('No size of the 36 drawers changes').waitFor();
    await field(page, 'Style').selectOption({ label: 'inset bevelled' });
    await field(page, 'Name of the style').fill('bevelled');
    await changes(page).getByText('3 of 36 drawers change').waitFor();
    expect(await changes(page).getByText('✕ can be fitted no more').count()).toBe(3);
    expect((await applied(page)).styles.map(({ name }) => name)).toEqual([
      'inset',
      'full overlay',
      'partial overlay',
      'bevelled',
      'inset 2',
    ]);
  });

  test("empties a kind's own member, and gives it another", async () => {
    const page = await standardPage();
    const kinds = page.getByRole('region', { name: 'Kinds of cabinet' });
    await kinds.getByLabel('Bottom rail, or bottom panel', { exact: true }).fill('');
    await kinds.getByLabel('Stile, or side panel', { exact: true }).fill('2');
    expect(await kinds.getByLabel('Source of Stile, or side panel').inputValue()).toBe(
      'common practice, no source',
    );
    const standard = await applied(page);
    expect(standard.cabinetKinds['desk base']?.members).toEqual({ stile: { value: 2 * INCH } });
  });

  test('tells an adjuster that begins above 0 at its field, and takes a signed length', async () => {
    const page = await standardPage();
    const least = field(page, 'Side adjuster, least');
    expect(await least.inputValue()).toBe('-1.5 mm');
    await least.fill('1/16');
    await page.getByText('Fault: it is above 0, but an adjuster begins where it moves nothing').waitFor();
    await least.fill('-1/16');
    await changes(page).getByText('No size of the 36 drawers changes').waitFor();
    const { slides } = await applied(page);
    expect(slides['undermount']?.adjusters['side']?.least.value).toBe(-INCH / 16);
  });

  test('chooses what fronts are made of, and edits one species at a time', async () => {
    const page = await standardPage();
    const wood = page.getByRole('region', { name: 'Wood and seasons' });
    expect(await field(page, 'Name of the species').inputValue()).toBe('hard maple');
    expect(await wood.getByRole('button', { name: 'Remove this species' }).isDisabled()).toBe(true);
    await field(page, 'Wood of fronts').selectOption('black cherry');
    await field(page, 'Slab fronts').selectOption('solid wood');
    await field(page, 'Name of the species').fill('sugar maple');
    await page.keyboard.press('Enter');
    await field(page, 'Species').selectOption('black cherry');
    expect(await field(page, 'Radial movement').inputValue()).toBe('0.00126');
    await field(page, 'Radial movement').fill('0.0013');
    await field(page, 'Name of the species').fill('cherry');
    await page.keyboard.press('Enter');
    const { front, species } = await applied(page);
    expect(front.wood).toMatchObject({ species: { value: 'cherry' }, slab: { value: 'solid' } });
    expect(species['cherry']?.radial.value).toBe(0.0013);
    expect(Object.keys(species)).toContain('sugar maple');
    expect(Object.keys(species)).not.toContain('hard maple');
  });

  test('edits the stock of screws, and tells a number that is none', async () => {
    const page = await standardPage();
    const screws = page.getByRole('region', { name: 'Screws', exact: true });
    await field(page, 'Screw').selectOption('#8 x 1-1/4 in pan');
    const number = field(page, 'Number of the screw');
    await number.fill('8a');
    expect(await number.getAttribute('aria-invalid')).toBe('true');
    await number.fill('10');
    await field(page, 'Head of the screw').selectOption('flat');
    await field(page, 'Threaded length').fill('2');
    await page.getByText('Fault: the thread is longer than the screw').waitFor();
    await field(page, 'Threaded length').fill('3/4');
    await screws.getByRole('button', { name: 'Add a copy of this screw' }).click();
    expect(await field(page, 'Name of the screw').inputValue()).toBe('#8 x 1-1/4 in pan 2');
    const { stock } = (await applied(page)).fastening;
    expect(stock).toHaveLength(13);
    expect(stock.find(({ name }) => name === '#8 x 1-1/4 in pan')).toMatchObject({
      gauge: 10,
      head: 'flat',
      thread: { value: 19.05 },
    });
  });

  test('adds a bit behind the one that is picked, faulty until its size is written', async () => {
    const page = await standardPage();
    await field(page, 'Bit').selectOption('7/64 in');
    await page.getByRole('button', { name: 'Add a copy of this bit' }).click();
    await page.getByText('Fault: it is no thicker than the bit before it').waitFor();
    await field(page, 'Diameter of the bit').fill('3 mm');
    await field(page, 'Driver part').selectOption('chuck');
    await field(page, 'Radius of the driver part').fill('3/4');
    const { bits, driver } = (await applied(page)).fastening;
    expect(bits.map(({ value }) => value).filter((mm) => mm > 2.5 && mm < 3.5)).toEqual([2.778125, 3, 3.175]);
    expect(driver.find(({ name }) => name === 'chuck')?.radius.value).toBe(19.05);
  });

  test('adds a sort of pull by a name of one word', async () => {
    const page = await standardPage();
    const pulls = page.getByRole('region', { name: 'Pulls' });
    await pulls.getByRole('button', { name: 'Add a copy of this pull' }).click();
    const name = field(page, 'Name of the pull');
    expect(await name.inputValue()).toBe('bar-2');
    await name.fill('edge pull');
    await page.keyboard.press('Enter');
    await page.getByText('Fault: a pull cell begins with it, so it is one word').waitFor();
    await name.fill('edge');
    await page.keyboard.press('Enter');
    await field(page, 'Holes of the pull').selectOption('one');
    await page.getByText('Fault: one hole has no distance from another').waitFor();
    await field(page, 'Distance of two holes').fill('0');
    expect((await applied(page)).pulls).toMatchObject({ bar: { holes: 2 }, edge: { holes: 1 } });
  });

  test('keeps what is no length as it is when another unit is shown', async () => {
    const page = await standardPage();
    await field(page, 'Safety factor').fill('4');
    await field(page, 'Pull on a front').fill('60 lbf');
    await field(page, 'Cover').fill('5/32');
    await change(page, { unit: 'mm' });
    expect(await field(page, 'Safety factor').inputValue()).toBe('4');
    expect(await field(page, 'Pull on a front').inputValue()).toBe('60 lbf');
    expect(await field(page, 'Specific gravity').inputValue()).toBe('0.63');
    expect(await field(page, 'Driest air, humidity').inputValue()).toBe('30 %');
    expect(await field(page, 'Cover').inputValue()).toBe('3.96875 mm');
    await field(page, 'Largest angle').fill('40');
    await change(page, { unit: 'in' });
    expect(await field(page, 'Largest angle').inputValue()).toBe('40');
    const { fastening } = await applied(page);
    expect(fastening.safety.value).toBe(4);
    expect(fastening['largestAngle']).toMatchObject({ value: 40 });
    expect(fastening.pull.value).toBeCloseTo(60 * 4.4482216152605, 9);
  });

  test('starts from a standard that comes with the program', async () => {
    const page = await standardPage();
    await field(page, 'One that comes with the program').selectOption('Face frame, side-mount slides');
    await page.getByRole('button', { name: 'Start from it' }).click();
    await changes(page)
      .getByText(/of 36 drawers change/)
      .waitFor();
    expect(await field(page, 'Name').inputValue()).toBe('Face frame, side-mount slides');
  });

  test.for([
    ['light', 1, 'in'],
    ['dark', 2, 'mm'],
  ] as const)('has nothing that axe finds, %s at %i times the size', async ([theme, zoom, unit]) => {
    const page = await standardPage(unit, { theme, zoom });
    await field(page, 'Left edge at the outside').fill('lap x');
    expect(await sidewaysScroll(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });
});
