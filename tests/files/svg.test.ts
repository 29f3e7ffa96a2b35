import * as fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkSvg } from '../../core/files/check-svg.ts';
import type { Drawing } from '../../core/files/drawing.ts';
import { writeSvg } from '../../core/files/svg.ts';
import { perimeter } from '../../core/geometry/measure.ts';
import { OPERATIONS } from '../../core/machine/operations.ts';
import { launchBrowser } from '../readers/browser.ts';
import { measureSvg } from '../readers/measure-svg.ts';
import { randomDrawings } from './random-drawing.ts';
import { circle, drawingOf, feature, LAYERS, path, PLATE, ring } from './sample-drawing.ts';
import { trueExtents } from './true-extents.ts';

const SEED = 88_001;

/** mm. The browser keeps coordinates as 32-bit floats: 4 m are good to 0.0003 mm; 0.01 mm is what SVG-1 asks. */
const WITHIN = 0.005;

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage();
});
afterAll(() => browser.close());

function written(drawing: Drawing): string {
  const { value, findings } = writeSvg(drawing);
  expect(findings).toEqual([]);
  return value;
}

const off = (name: string, seen: number, wanted: number, within = WITHIN): readonly string[] =>
  Math.abs(seen - wanted) <= within ? [] : [`${name}: ${seen} is not ${wanted} within ${within}`];

/** What Chromium measures otherwise than the source says: page, place and length of each contour, in running order. */
async function differencesInBrowser(drawing: Drawing): Promise<readonly string[]> {
  const seen = await measureSvg(page, written(drawing));
  const [minX, minY, maxX, maxY] = trueExtents(drawing);
  const sources = OPERATIONS.flatMap((operation) =>
    drawing.features.filter((f) => f.operation === operation),
  );
  const kinds = sources.map(
    ({ operation, contour }) => `${LAYERS[operation].name} ${contour.kind === 'circle' ? 'circle' : 'path'}`,
  );
  const seenKinds = seen.shapes.map(({ group, tag }) => `${group} ${tag}`);
  return [
    ...(seenKinds.join() === kinds.join() ? [] : [`${seenKinds.join()} is not ${kinds.join()}`]),
    ...off('page width', seen.widthMm, maxX - minX + 2),
    ...off('page height', seen.heightMm, maxY - minY + 2),
    ...seen.shapes.flatMap((shape, index): readonly string[] => {
      const source = sources[index];
      if (source === undefined) return [];
      const [left, bottom, right, top] = trueExtents({ layers: LAYERS, features: [source] });
      const length = perimeter(source.contour);
      // The browser walks a circle along a few chords; its box says all there is. Paths are walked within 0.02 %.
      const walked = shape.tag === 'path' ? shape.length : length;
      return off(`left of ${index}`, shape.x, left - minX + 1).concat(
        off(`top of ${index}`, shape.y, maxY - top + 1),
        off(`width of ${index}`, shape.width, right - left),
        off(`height of ${index}`, shape.height, top - bottom),
        off(`length of ${index}`, walked, length, WITHIN + 2e-4 * length),
      );
    }),
  ];
}

describe('writeSvg in a browser', () => {
  test('SVG-1: the plate is rendered at true size, each contour in its place and of its length', async () => {
    expect(await differencesInBrowser(PLATE)).toEqual([]);
  });

  test(`SVG-1: so are 40 random drawings, seed ${SEED}`, async () => {
    const drawings = fc.sample(randomDrawings, { seed: SEED, numRuns: 40 });
    for (const drawing of drawings) expect(await differencesInBrowser(drawing)).toEqual([]);
  });

  test('SVG-1: half circles of 300 mm radius at odd places keep their size in a reader of 32-bit numbers', async () => {
    for (let index = 0; index < 40; index += 1) {
      const [x, y] = [7.123457 * index, 1.71717 * index];
      const drawing = drawingOf(feature('cut-outer', ring([x, y, 1], [x, y + 600, 0.1])));
      expect(await differencesInBrowser(drawing)).toEqual([]);
    }
  });

  test('SVG-1, SVG-2: a point inside an outline that only its arc encloses is inside in the browser, and its mirror image is not', async () => {
    // A half circle to the right of x = 10: up is up and the bulge goes the way that DXF says.
    const drawing = drawingOf(
      feature('cut-outer', ring([0, 0], [10, 0, 1], [10, 20], [0, 20, 0.3], [0, 10])),
    );
    await page.setContent(written(drawing));
    const inside = await page.evaluate(`(() => {
      const path = document.querySelector('path');
      const top = 21, left = 1 + ${-trueExtents(drawing)[0]};
      return [[18, 10], [10.5, 19.5], [0, 16], [-1, 15], [-1, 5], [18, 19]].map(([x, y]) =>
        path.isPointInFill(new DOMPoint(x + left, top - y)));
    })()`);
    expect(inside).toEqual([true, true, true, true, false, false]);
  });
});

describe('writeSvg', () => {
  test('SVG-1: states its size in mm, equal to the viewBox, with a margin of 1 mm', () => {
    const text = written(drawingOf(feature('cut-outer', ring([5, 5], [105, 5], [105, 55], [5, 55]))));
    expect(text).toContain('width="102.000000mm" height="52.000000mm" viewBox="0 0 102.000000 52.000000"');
    expect(text).toContain(
      '<path d="M 1.000000 51.000000 L 101.000000 51.000000 L 101.000000 1.000000 L 1.000000 1.000000 Z"/>',
    );
  });

  test('SVG-2: engraving comes first, then what is inside, then the outline', () => {
    const ids = [...written(PLATE).matchAll(/<g id="([^"]*)"/g)].map(([, id]) => id);
    expect(ids).toEqual(['ENGRAVE', 'DRILL', 'POCKET-2', 'CUT_INNER', 'CUT_OUTER']);
  });

  test(`SVG-1, SVG-2: the checker finds nothing in 200 random drawings, seed ${SEED}, and no word that an importer misplaces is in them`, () => {
    fc.assert(
      fc.property(randomDrawings, (drawing) => {
        const text = written(drawing);
        expect(checkSvg(text, drawing.layers)).toEqual([]);
        expect(text).not.toMatch(/transform|style|class|<defs|<use|clip|<text|xlink|<!--|e[+-]\d|NaN/);
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
  });

  test('GEOM, SVG-2: an outline of 40 segments has 40 in the file, arcs as A, the last straight one as Z', () => {
    const corners = Array.from({ length: 40 }, (_, index) => {
      const angle = (2 * Math.PI * index) / 40;
      return [60 * Math.cos(angle), 60 * Math.sin(angle), index % 2 === 0 ? 0.3 : 0] as const;
    });
    const text = written(drawingOf(feature('cut-outer', ring(...corners))));
    expect(text.match(/A /g)?.length).toBe(20);
    expect(text.match(/L /g)?.length).toBe(19);
    expect(text.match(/Z/g)?.length).toBe(1);
  });

  test('SVG-2: closed paths end with Z, engraving does not', () => {
    const drawing = drawingOf(
      feature('engrave', path([0, 0], [5, 5, 0.5], [9, 5])),
      feature('cut-inner', ring([20, 0, 1], [30, 0, 1])),
    );
    const data = [...written(drawing).matchAll(/ d="([^"]*)"/g)].map(([, d]) => d ?? '');
    expect(data.map((d) => d.endsWith(' Z'))).toEqual([false, true]);
  });

  test('SVG-2: arcs up to 170° are one command, half circles are two quarters that meet in the middle', () => {
    const wide = Math.tan((169 / 4) * (Math.PI / 180));
    const one = written(drawingOf(feature('cut-inner', ring([0, 0, wide], [10, 0]))));
    expect(one.match(/A /g)?.length).toBe(1);
    // From (0, 0) below the chord to (20, 0): the middle is (10, -10), the page's (11, 11).
    const two = written(drawingOf(feature('cut-inner', ring([0, 0, 1], [20, 0]))));
    expect(two).toContain(
      'd="M 1.000000 1.000000 A 10.000000 10.000000 0 0 0 11.000000 11.000000 A 10.000000 10.000000 0 0 0 21.000000 1.000000 Z"',
    );
  });

  test('SVG-2: refuses with the same findings as the other writer, with no text', () => {
    const open = drawingOf(
      feature('cut-outer', path([0, 0], [5, 0])),
      feature('drill', circle(0, 0, Number.NaN)),
    );
    const { value, findings } = writeSvg(open);
    expect([value, findings.map(({ code }) => code)]).toEqual(['', ['files/open-contour', 'files/geometry']]);
  });

  test('SVG-2: refuses a colour that is none', () => {
    const layers = { ...LAYERS, drill: { ...LAYERS.drill, color: 'red"/><script/>' } };
    const { value, findings } = writeSvg({ layers, features: [feature('drill', circle(0, 0, 2))] });
    expect([value, findings.map(({ code }) => code)]).toEqual(['', ['files/layer-color']]);
  });

  test('EXP: the same drawing gives the same bytes', () => {
    expect(written(structuredClone(PLATE))).toBe(written(PLATE));
  });
});
