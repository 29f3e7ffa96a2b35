import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { Point } from '../geometry/types.ts';
import { SHORTEST_SEGMENT } from '../units/tolerances.ts';
import type { Drawing } from './drawing.ts';
import type { SvgElement } from './svg-elements.ts';
import { outermostOf, readPath, type SvgOutline } from './svg-outline.ts';

/** A finding of the checker. */
export const fault = (code: string, message: string): Finding => error(`svg/${code}`, message);

export const NUMBER = /^-?(0|[1-9]\d*)\.\d{6}$/;

/** mm. Half of the drawn line, which must stay on the page. */
const HALF_STROKE = 0.05;

/** The geometry of a path or circle: numbers, closing, short sides, and whether it stays on the page. */
export function checkShape(
  element: SvgElement,
  root: SvgElement | undefined,
  layers: Drawing['layers'],
  openOutlines: boolean,
): readonly Finding[] {
  if (element.name === 'circle') return checkCircle(element, root);
  return element.name === 'path' ? checkPath(element, root, layers, openOutlines) : [];
}

function checkCircle({ attributes }: SvgElement, root: SvgElement | undefined): readonly Finding[] {
  const values = ['cx', 'cy', 'r'].map((key) => attributes[key] ?? '');
  const [x = NaN, y = NaN, r = NaN] = values.map(Number);
  const corners = [
    { x: x - r, y: y - r },
    { x: x + r, y: y + r },
  ];
  return [
    ...(values.every((value) => NUMBER.test(value))
      ? []
      : [fault('number', `A circle has the numbers ${values.join(', ')}.`)]),
    ...(r > 0 ? [] : [fault('radius', `A circle has the radius ${r}.`)]),
    ...checkInside(corners, root),
  ];
}

function checkPath(
  { attributes, parent }: SvgElement,
  root: SvgElement | undefined,
  layers: Drawing['layers'],
  openOutlines: boolean,
): readonly Finding[] {
  const outline = readPath(attributes['d'] ?? '');
  const group = parent?.attributes['id'];
  // What can't be read can't be measured either.
  if (outline.faults.length > 0) {
    return outline.faults.map((words) => fault('path', `A path can't be read: ${words}.`));
  }
  const mayBeOpen = [
    layers.engrave.name,
    layers.tab.name,
    ...(openOutlines ? [layers['cut-outer'].name] : []),
  ].some((name) => name === group);
  const open = !outline.closed && !mayBeOpen;
  return [
    ...(open ? [fault('open-contour', `A path of ${group} is open.`)] : []),
    ...checkSides(outline),
    ...checkInside(outermostOf(outline), root),
  ];
}

function checkSides({ vertices, closed }: SvgOutline): readonly Finding[] {
  // An arc that ends a closed outline comes back to the first point by itself, and Z adds nothing.
  const arcCloses = closed && vertices.at(-2)?.bulge !== 0;
  return vertices.flatMap((start, index) => {
    const last = index === vertices.length - 1;
    if (last && (!closed || arcCloses)) return [];
    const end = vertices[(index + 1) % vertices.length] ?? start;
    const length = Math.hypot(end.x - start.x, end.y - start.y);
    // Ends are rounded as they are written: a side may have lost one step at each end.
    return length < SHORTEST_SEGMENT - 2e-6 ? [fault('short-segment', `A side is ${length} mm long.`)] : [];
  });
}

/** Everything lies on the page, half the stroke included. */
function checkInside(points: readonly Point[], root: SvgElement | undefined): readonly Finding[] {
  const [, , width = NaN, height = NaN] = (root?.attributes['viewBox'] ?? '').split(' ').map(Number);
  const inside = points.every(
    ({ x, y }) =>
      x >= HALF_STROKE && y >= HALF_STROKE && x <= width - HALF_STROKE && y <= height - HALF_STROKE,
  );
  return inside ? [] : [fault('outside', 'A contour leaves the page.')];
}
