import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { SeatScene } from '../../core/scene/types.ts';
import { axeFindings } from '../readers/axe.ts';
import { launchBrowser } from '../readers/browser.ts';
import { coloursOf, unlike } from '../readers/png-colours.ts';
import { demoScenes, SOME } from '../scene/demo-scenes.ts';
import {
  buildSeatPage,
  framesOf,
  openSeatPage,
  settled,
  showSeat,
  type BuiltFile,
  type SeatPage,
} from './seat-page.ts';

let files: readonly BuiltFile[] = [];
let browser: Browser | null = null;
let shared: SeatPage | null = null;
let fresh: SeatPage | null = null;

beforeAll(async () => {
  [files, browser] = await Promise.all([buildSeatPage(), launchBrowser()]);
});

afterEach(async () => {
  const complaints = [shared, fresh].flatMap((one) => one?.complaints.splice(0) ?? []);
  await fresh?.page.close();
  fresh = null;
  expect(complaints).toEqual([]);
});

afterAll(() => browser?.close());

const scenes = demoScenes(SOME).flatMap((one) => one.scenes);

/** A seat of the demo orders: of a kind of jig, at an edge. */
function seat(kind: string, edge: SeatScene['edges'][number]): SeatScene {
  const found = scenes.find(({ scene }) => scene.jig.kind === kind && scene.edges.includes(edge));
  if (found === undefined) throw new Error(`no ${kind} at the ${edge}`);
  return found.scene;
}

const SEATS = [
  ['bottom fence', 'bottom'],
  ['side spacer', 'left'],
  ['side spacer', 'right'],
  ['step profile', 'left'],
  ['corner fence', 'left'],
  ['corner fence', 'right'],
] as const;

/** A page of its own. */
async function openFresh(options: Parameters<typeof openSeatPage>[2] = {}): Promise<SeatPage> {
  if (browser === null) throw new Error('no browser');
  fresh = await openSeatPage(browser, files, options);
  return fresh;
}

/** The page that most tests share, with nothing shown. */
async function opened(): Promise<SeatPage> {
  if (browser === null) throw new Error('no browser');
  shared ??= await openSeatPage(browser, files);
  await showSeat(shared.page, { scene: null, unit: 'in', theme: 'light', reducedMotion: true });
  await shared.page.waitForSelector('.seat-empty');
  return shared;
}

/** How many colours the picture has; a blank one has few. */
const picture = async ({ page }: SeatPage) =>
  coloursOf(await page.locator('.seat-picture canvas').screenshot());

describe('SeatView: the picture', () => {
  test.for(SEATS)('a %s at the %s edge is drawn in light and dark, from everywhere', async ([kind, edge]) => {
    const shown = await opened();
    await showSeat(shown.page, { scene: seat(kind, edge) });
    await settled(shown.page);
    const light = await picture(shown);
    expect(light.count).toBeGreaterThan(40);
    const seen = new Set<string>();
    for (const name of ['Three-quarter', 'From above', 'Edge on', 'From the side']) {
      await shown.page.getByRole('button', { name }).click();
      await settled(shown.page);
      const { count, print } = await picture(shown);
      expect(count).toBeGreaterThan(20);
      seen.add(print);
    }
    expect(seen.size).toBe(4);
    const before = await framesOf(shown.page);
    await showSeat(shown.page, { theme: 'dark' });
    await settled(shown.page);
    expect(await framesOf(shown.page)).toBeGreaterThan(before);
    const dark = await picture(shown);
    expect(dark.brightest).toBeLessThan(light.brightest);
  });

  test('no picture is made while nothing changes, and one more for each change', async () => {
    const shown = await opened();
    await showSeat(shown.page, { scene: seat('bottom fence', 'bottom') });
    const at = await settled(shown.page);
    await shown.page.waitForTimeout(1500);
    expect(await framesOf(shown.page)).toBe(at);
    await shown.page.getByRole('button', { name: 'From above' }).click();
    const after = await settled(shown.page);
    expect(after).toBeGreaterThan(at);
    expect(after - at).toBeLessThanOrEqual(3);
  });

  test('three.js is loaded when a seat has been drawn flat, and not before', async () => {
    const shown = await openFresh();
    await shown.page.waitForSelector('.seat-empty');
    const heavy = files.filter(({ first, name }) => !first && name.includes('SpaceSeat'));
    expect(heavy).toHaveLength(1);
    expect(shown.asked.some((name) => name.includes('SpaceSeat'))).toBe(false);
    await showSeat(shown.page, { scene: seat('bottom fence', 'bottom') });
    await settled(shown.page);
    expect(shown.asked.some((name) => name.includes('SpaceSeat'))).toBe(true);
    const early = files.filter(({ first, name }) => first && name.endsWith('.js'));
    for (const { text } of early) expect(text).not.toContain('WebGLRenderer');
  });

  test('turned, cut open and drawn apart it looks different each time', async () => {
    const shown = await opened();
    const { page } = shown;
    await showSeat(page, { scene: seat('side spacer', 'left') });
    await settled(page);
    const prints = [(await picture(shown)).print];
    const next = async () => {
      await settled(page);
      prints.push((await picture(shown)).print);
    };
    await page.getByLabel('Cut open').check();
    await next();
    await page.getByLabel('Place of the cut').fill('0.2');
    await next();
    await page.getByLabel('Cut open').uncheck();
    await page.getByLabel('Draw apart').fill('1');
    await next();
    await page.getByLabel('Draw apart').fill('0');
    await page.getByLabel('Spaces to keep clear').check();
    await next();
    expect(new Set(prints).size).toBe(prints.length);
  });
});

describe('SeatView: the words', () => {
  test('overhangs are told in the unit that is shown', async () => {
    const { page } = await opened();
    await showSeat(page, { scene: seat('corner fence', 'left'), unit: 'in' });
    await settled(page);
    const labels = () => page.locator('.seat-label').allTextContents();
    expect(await labels()).toEqual([
      'Cabinet left',
      'Bottom overhang 0.4921"',
      'Cabinet-left overhang 0.8465"',
    ]);
    await showSeat(page, { unit: 'mm' });
    expect(await labels()).toEqual([
      'Cabinet left',
      'Bottom overhang 12.5 mm',
      'Cabinet-left overhang 21.5 mm',
    ]);
  });

  test('the labels stand inside the picture and clear of one another, as it is turned', async () => {
    const { page } = await opened();
    await showSeat(page, { scene: seat('corner fence', 'right') });
    for (const name of ['Three-quarter', 'From above', 'Edge on', 'From the side']) {
      await page.getByRole('button', { name }).click();
      await settled(page);
      const frame = await page.locator('.seat-picture').boundingBox();
      const boxes = await Promise.all(
        (await page.locator('.seat-label').all()).map((label) => label.boundingBox()),
      );
      expect(boxes).toHaveLength(3);
      for (const [index, box] of boxes.entries()) {
        if (box === null || frame === null) throw new Error('a label is not shown');
        expect(box.x).toBeGreaterThanOrEqual(frame.x);
        expect(box.x + box.width).toBeLessThanOrEqual(frame.x + frame.width);
        expect(box.y).toBeGreaterThanOrEqual(frame.y);
        expect(box.y + box.height).toBeLessThanOrEqual(frame.y + frame.height);
        for (const other of boxes.slice(index + 1)) {
          if (other === null) throw new Error('a label is not shown');
          const apart =
            box.x + box.width <= other.x ||
            other.x + other.width <= box.x ||
            box.y + box.height <= other.y ||
            other.y + other.height <= box.y;
          expect(apart).toBe(true);
        }
      }
    }
  });

  test('it always says where the cabinet left is in the picture', async () => {
    const { page } = await opened();
    const said = async (scene: SeatScene, name: string) => {
      await showSeat(page, { scene });
      await page.getByRole('button', { name }).click();
      return page.locator('.seat-compass').innerText();
    };
    const bottom = seat('bottom fence', 'bottom');
    expect(await said(bottom, 'From above')).toBe('Cabinet left is on the right');
    expect(await said(bottom, 'Edge on')).toBe('Cabinet left is on the right');
    expect(await said(bottom, 'From the side')).toBe('Cabinet left is towards you');
    expect(await said(seat('side spacer', 'left'), 'Edge on')).toBe('Cabinet left is towards you');
    expect(await said(seat('side spacer', 'right'), 'Edge on')).toBe('Cabinet left is away from you');
    expect(await said(seat('side spacer', 'left'), 'From the side')).toBe('Cabinet left is on the left');
  });

  test('without a seat it says what to pick', async () => {
    const { page } = await opened();
    expect(await page.locator('.seat-empty').innerText()).toMatch(/^Pick a jig/);
  });
});

describe('SeatView: by keyboard', () => {
  test('every control is reached with the tab key, and the views are chosen with the space bar', async () => {
    const { page } = await opened();
    await showSeat(page, { scene: seat('bottom fence', 'bottom') });
    await settled(page);
    await page.locator('.seat-picture').focus();
    const names: string[] = [];
    for (let press = 0; press < 22; press += 1) {
      await page.keyboard.press('Tab');
      names.push(
        await page.evaluate(() => {
          const active: {
            textContent: string;
            ariaLabel: string | null;
            labels?: { textContent: string }[];
          } = Reflect.get(Reflect.get(globalThis, 'document'), 'activeElement');
          return active.ariaLabel ?? active.labels?.[0]?.textContent ?? active.textContent;
        }),
      );
      if (names.at(-1) === 'From above') await page.keyboard.press('Space');
    }
    expect(names).toEqual(
      expect.arrayContaining([
        'Smaller',
        'Larger',
        'Show all',
        'Three-quarter',
        'From above',
        'Edge on',
        'From the side',
        'Cut open',
        'Draw apart',
        'Spaces to keep clear',
        '1 Place front',
        '6 Lift off',
        'Play',
        'Next',
      ]),
    );
    expect(await page.getByRole('button', { name: 'From above' }).getAttribute('aria-pressed')).toBe('true');
  });

  test('arrows turn the picture, with Shift they move it, plus enlarges and 0 shows all again', async () => {
    const shown = await opened();
    const { page } = shown;
    await showSeat(page, { scene: seat('bottom fence', 'bottom') });
    await settled(page);
    const press = async (key: string) => {
      await page.locator('.seat-picture').press(key);
      await settled(page);
      return (await picture(shown)).print;
    };
    // The first press also brings the outline of the focus.
    const first = await press('0');
    const turned = await press('ArrowRight');
    expect(turned).not.toBe(first);
    expect(await page.getByRole('button', { name: 'Three-quarter' }).getAttribute('aria-pressed')).toBe(
      'false',
    );
    expect(await press('ArrowLeft')).toBe(first);
    const moved = await press('Shift+ArrowUp');
    expect(moved).not.toBe(first);
    const large = await press('+');
    expect(large).not.toBe(moved);
    expect(await press('0')).toBe(first);
  });

  test('the steps of use go on and back by their buttons, and say what to do', async () => {
    const { page } = await opened();
    const scene = seat('side spacer', 'right');
    await showSeat(page, { scene });
    await settled(page);
    const words = () => page.locator('.seat-words').innerText();
    const next = page.getByRole('button', { name: 'Next' });
    for (const step of scene.steps) {
      await next.press('Enter');
      expect(await words()).toBe(step.words);
    }
    expect(await next.isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Previous' }).press('Enter');
    expect(await words()).toBe(scene.steps.at(-2)?.words);
    await page.getByRole('button', { name: '2 Seat jig' }).press('Space');
    expect(await words()).toBe(scene.steps[1]?.words);
    await page.getByRole('button', { name: '2 Seat jig' }).press('Space');
    expect(await words()).toMatch(/^The jig in its seat/);
  });

  test('played, the steps follow one another, and can be paused', async () => {
    const { page } = await openFresh({ reducedMotion: 'no-preference' });
    const scene = seat('bottom fence', 'bottom');
    await showSeat(page, { scene, reducedMotion: false });
    await settled(page);
    const before = await framesOf(page);
    await page.getByRole('button', { name: 'Play' }).click();
    await page.getByText(scene.steps[1]?.words ?? 'no step').waitFor();
    await page.getByRole('button', { name: 'Pause' }).click();
    await settled(page);
    expect(await framesOf(page)).toBeGreaterThan(before + 4);
  });

  test('with reduced motion a step is there at once', async () => {
    const { page } = await opened();
    await showSeat(page, { scene: seat('bottom fence', 'bottom'), reducedMotion: true });
    const before = await settled(page);
    await page.getByRole('button', { name: '2 Seat jig' }).click();
    expect((await settled(page)) - before).toBeLessThanOrEqual(4);
  });
});

describe('SeatView: accessible', () => {
  test.for(['light', 'dark'] as const)(
    'axe finds nothing, %s, at rest, cut open and in a step',
    async (theme) => {
      const { page } = await opened();
      await showSeat(page, { theme });
      expect(await axeFindings(page)).toEqual([]);
      await showSeat(page, { scene: seat('corner fence', 'left') });
      await settled(page);
      expect(await axeFindings(page)).toEqual([]);
      await page.getByLabel('Cut open').check();
      await page.getByRole('button', { name: '4 Drill' }).click();
      await settled(page);
      expect(await axeFindings(page)).toEqual([]);
    },
  );

  test('in a narrow window at 200 % nothing stands out at the side', async () => {
    const { page } = await openFresh({ width: 360, height: 700 });
    await showSeat(page, { scene: seat('bottom fence', 'bottom') });
    await settled(page);
    const beyond = await page.evaluate(() => {
      const root: { scrollWidth: number; clientWidth: number } = Reflect.get(
        Reflect.get(globalThis, 'document'),
        'documentElement',
      );
      return root.scrollWidth - root.clientWidth;
    });
    expect(beyond).toBe(0);
  });
});

describe('SeatView: without WebGL', () => {
  let bare: Browser | null = null;

  beforeAll(async () => {
    bare = await chromium.launch({
      executablePath: '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-webgl',
        '--disable-3d-apis',
        '--disable-software-rasterizer',
      ],
    });
  });

  afterAll(() => bare?.close());

  /** A page of a browser that has none. */
  async function openBare(): Promise<SeatPage> {
    if (bare === null) throw new Error('no browser');
    fresh = await openSeatPage(bare, files);
    return fresh;
  }

  /** Ways to look at a seat, each from the one before. */
  const LOOKS: readonly (readonly [string, (page: Page) => Promise<unknown>])[] = [
    ['as it comes', async () => undefined],
    ['cut open', (page) => page.getByLabel('Cut open').check()],
    ['drawn apart', (page) => page.getByLabel('Draw apart').fill('1')],
    ['whole again, with what is kept clear', (page) => page.getByLabel('Cut open').uncheck()],
    ['a step', (page) => page.getByRole('button', { name: /^4 / }).click()],
  ];

  test.for([
    ['bottom fence', 'bottom'],
    ['step profile', 'left'],
    ['corner fence', 'right'],
  ] as const)('a %s at the %s edge looks as three.js draws it', async ([kind, edge]) => {
    const [{ page: known }, { page: bare }] = [await opened(), await openBare()];
    const pages = [known, bare];
    for (const page of pages) await showSeat(page, { scene: seat(kind, edge) });
    // The pictures are to be of one size.
    await bare.addStyleTag({ content: '.seat-without { display: none }' });
    const otherwise: string[] = [];
    for (const [name, act] of LOOKS) {
      const shots: Buffer[] = [];
      for (const page of pages) {
        await act(page);
        if (page === known) await settled(page);
        shots.push(await page.locator('.seat-picture').screenshot());
      }
      const [reference, flat] = shots;
      if (reference === undefined || flat === undefined) throw new Error('no pictures');
      // Lines are smoothed otherwise, and a hatch begins elsewhere.
      const share = await unlike(reference, flat);
      if (share > 0.03) otherwise.push(`${name}: ${share}`);
    }
    expect(otherwise).toEqual([]);
  });

  test('it says that it turns less smoothly, and all of it can be used', async () => {
    const { page } = await openBare();
    await showSeat(page, { scene: seat('bottom fence', 'bottom'), unit: 'in' });
    expect(await page.locator('.seat-without').innerText()).toContain('This window draws without WebGL');
    expect(await page.locator('canvas').count()).toBe(0);
    expect(await page.locator('.seat-labels').innerText()).toContain('11/16"');
    const print = async () => (await coloursOf(await page.locator('.seat-picture').screenshot())).print;
    const prints = [await print()];
    for (const key of ['ArrowLeft', '+', 'Shift+ArrowUp', '0']) {
      await page.locator('.seat-picture').press(key);
      prints.push(await print());
    }
    // 0 shows all again, as before it was enlarged.
    expect(prints.at(-1)).toBe(prints[1]);
    expect(new Set(prints).size).toBe(prints.length - 1);
    expect(await axeFindings(page)).toEqual([]);
  });

  test('a context that is lost later takes nothing away, and is taken up again when asked', async () => {
    const { page } = await opened();
    await showSeat(page, { scene: seat('bottom fence', 'bottom') });
    await settled(page);
    await page.evaluate(() => {
      const canvas: {
        getContext: (kind: string) => { getExtension: (name: string) => { loseContext: () => void } };
      } = Reflect.get(globalThis, 'document').querySelector('canvas');
      canvas.getContext('webgl2').getExtension('WEBGL_lose_context').loseContext();
    });
    await page.locator('.seat-flat path').first().waitFor();
    await page.getByRole('button', { name: 'Try again' }).press('Enter');
    await page.waitForSelector('.seat-picture canvas');
    await settled(page);
    expect(await page.locator('.seat-flat').count()).toBe(0);
    expect(await page.locator('.seat-without').count()).toBe(0);
  });
});
