import type { Outcome } from '../findings/finding.ts';
import type { Contour } from '../geometry/types.ts';
import { OPERATIONS, type Operation } from '../machine/operations.ts';
import type { Drawing } from './drawing.ts';
import { coordinate } from './numbers.ts';
import { prepareDrawing } from './prepare.ts';
import { pageOf, pathData, type ToPage } from './svg-path.ts';

/** mm. Width of the drawn line; machines follow its middle. */
const STROKE_WIDTH = 0.1;

/** mm about the drawing, so that half a stroke never leaves the page. */
const SVG_MARGIN = 1;

/**
 * The text of an SVG file at true size, 1 unit = 1 mm: one flat group for each operation, in running order.
 * With an error among the findings the text is empty: a file that can't be right isn't written.
 */
export function writeSvg(drawing: Drawing): Outcome<string> {
  const { drawing: ready, findings } = prepareDrawing(drawing);
  if (ready === null) return { value: '', findings };
  const { min, max } = ready.extents;
  const toPage = pageOf(min.x - SVG_MARGIN, max.y + SVG_MARGIN);
  const width = coordinate(max.x - min.x + 2 * SVG_MARGIN);
  const height = coordinate(max.y - min.y + 2 * SVG_MARGIN);
  const groups = OPERATIONS.map((operation) => group(ready, operation, toPage));
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `${groups.join('')}</svg>`,
  ];
  return { value: `${lines.join('\n')}\n`, findings };
}

/** The flat group of one operation, or nothing if it draws nothing. */
function group(drawing: Drawing, operation: Operation, toPage: ToPage): string {
  const drawn = drawing.features.filter((feature) => feature.operation === operation);
  if (drawn.length === 0) return '';
  const { name, color } = drawing.layers[operation];
  const elements = drawn.map(({ contour }) => `${element(contour, toPage)}\n`);
  return `<g id="${name}" fill="none" stroke="${color}" stroke-width="${STROKE_WIDTH}">\n${elements.join('')}</g>\n`;
}

function element(contour: Contour, toPage: ToPage): string {
  if (contour.kind !== 'circle') return `<path d="${pathData(contour, toPage)}"/>`;
  const { x, y } = toPage(contour.center);
  return `<circle cx="${coordinate(x)}" cy="${coordinate(y)}" r="${coordinate(contour.radius)}"/>`;
}
