import type { Page } from 'playwright-core';
import { z } from 'zod';

const measured = z.object({
  widthPx: z.number(),
  heightPx: z.number(),
  shapes: z.array(
    z.object({
      group: z.string(),
      tag: z.string(),
      x: z.number(),
      y: z.number(),
      width: z.number(),
      height: z.number(),
      length: z.number(),
    }),
  ),
});

export interface MeasuredSvg {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Boxes without stroke and lengths, in user units, in the order of the file. */
  readonly shapes: z.infer<typeof measured>['shapes'];
}

/** mm in a pixel: CSS defines an inch as 96 of them. */
const PIXEL = 25.4 / 96;

const SCRIPT = `(() => {
  const page = document.querySelector('svg').getBoundingClientRect();
  const shapes = [...document.querySelectorAll('svg path, svg circle')].map((shape) => {
    const { x, y, width, height } = shape.getBBox();
    const length = shape.getTotalLength();
    return { group: shape.parentNode.id, tag: shape.tagName, x, y, width, height, length };
  });
  return { widthPx: page.width, heightPx: page.height, shapes };
})()`;

/** What a real browser makes of an SVG text, shown in a page that may be used again. */
export async function measureSvg(page: Page, svg: string): Promise<MeasuredSvg> {
  await page.setContent(`<body style="margin:0">${svg.replace(/^<\?[^>]*\?>/, '')}</body>`);
  const { widthPx, heightPx, shapes } = measured.parse(await page.evaluate(SCRIPT));
  return { widthMm: widthPx * PIXEL, heightMm: heightPx * PIXEL, shapes };
}
