import type { Finding } from '../findings/finding.ts';
import { OPERATIONS } from '../machine/operations.ts';
import type { Drawing } from './drawing.ts';
import { checkShape, fault, NUMBER } from './check-svg-shapes.ts';
import { readSvg, type SvgElement } from './svg-elements.ts';

/** Elements and their attributes, all of them needed and no other allowed (requirement SVG-2). */
const ATTRIBUTES: Readonly<Record<string, readonly string[]>> = {
  svg: ['xmlns', 'version', 'width', 'height', 'viewBox'],
  g: ['id', 'fill', 'stroke', 'stroke-width'],
  path: ['d'],
  circle: ['cx', 'cy', 'r'],
};

const DEPTH: Readonly<Record<string, number>> = { svg: 0, g: 1, path: 2, circle: 2 };

/**
 * Reads an SVG file back and finds what an importer could stumble over (requirements SVG-1 and SVG-2). An empty
 * list means that the file is right for these layers. `openOutlines`: outlines may be open, for bridges.
 */
export function checkSvg(text: string, layers: Drawing['layers'], openOutlines = false): readonly Finding[] {
  const { elements, faults } = readSvg(text);
  const [root] = elements;
  return [
    ...faults.map((words) => fault('structure', `The file has ${words}.`)),
    ...elements.flatMap(checkElement),
    ...checkGroups(elements, layers),
    ...(root === undefined ? [fault('structure', 'The file has no element.')] : checkPage(root)),
    ...elements.flatMap((element) => checkShape(element, root, layers, openOutlines)),
  ];
}

function checkElement({ name, depth, attributes }: SvgElement): readonly Finding[] {
  const allowed = ATTRIBUTES[name];
  if (allowed === undefined) return [fault('element', `The element ${name} is not allowed.`)];
  const given = Object.keys(attributes);
  const findings = [
    ...given
      .filter((key) => !allowed.includes(key))
      .map((key) => fault('attribute', `The attribute ${key} of ${name} is not allowed.`)),
    ...allowed
      .filter((key) => !given.includes(key))
      .map((key) => fault('attribute', `${name} has no ${key}.`)),
  ];
  return depth === DEPTH[name]
    ? findings
    : [...findings, fault('structure', `${name} stands at depth ${depth}.`)];
}

/** One group for each operation, in running order, with no fill and the thin stroke. */
function checkGroups(elements: readonly SvgElement[], layers: Drawing['layers']): readonly Finding[] {
  const groups = elements.filter(({ name }) => name === 'g');
  const order = OPERATIONS.map((operation) => layers[operation].name);
  const places = groups.map(({ attributes }) => order.indexOf(attributes['id'] ?? ''));
  return groups.flatMap(({ attributes }, index) => {
    const { id, fill, stroke } = attributes;
    const place = places[index] ?? -1;
    const findings: Finding[] = [];
    if (place < 0) findings.push(fault('group', `The group ${id} is no operation's.`));
    else if (place <= (places[index - 1] ?? -1))
      findings.push(fault('order', `The group ${id} comes too late.`));
    const thin = attributes['stroke-width'] === '0.1';
    if (fill !== 'none' || !thin || !/^#[0-9a-fA-F]{6}$/.test(stroke ?? '')) {
      findings.push(fault('stroke', `The group ${id} is not drawn as a thin line without fill.`));
    }
    return findings;
  });
}

function checkPage({ attributes }: SvgElement): readonly Finding[] {
  const { width = '', height = '', viewBox = '' } = attributes;
  const size = [width, height].map((length) => length.replace(/mm$/, ''));
  const right = width.endsWith('mm') && height.endsWith('mm') && size.every((length) => NUMBER.test(length));
  const fits = right && viewBox === `0 0 ${size.join(' ')}`;
  return fits
    ? []
    : [fault('size', `The size ${width} by ${height} and the viewBox “${viewBox}” do not agree.`)];
}
