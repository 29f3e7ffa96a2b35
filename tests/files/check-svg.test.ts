import { describe, expect, test } from 'vitest';
import { checkSvg } from '../../core/files/check-svg.ts';
import { writeSvg } from '../../core/files/svg.ts';
import { circle, drawingOf, feature, LAYERS, path, PLATE, ring } from './sample-drawing.ts';

const SMALL = drawingOf(
  feature('engrave', path([2, 2], [6, 8])),
  feature('cut-inner', circle(10, 20, 3.175)),
  feature('cut-outer', ring([0, 0], [40, 0, 0.4], [40, 30], [0, 30])),
);

const GOOD = writeSvg(SMALL).value;

const codesOf = (text: string): readonly string[] => [
  ...new Set(checkSvg(text, LAYERS).map(({ code }) => code)),
];

type Damage = readonly [what: string, from: string, to: string, codes: readonly string[]];

const damages: readonly Damage[] = [
  ['a transform', '<g id="ENGRAVE"', '<g transform="scale(2)" id="ENGRAVE"', ['svg/attribute']],
  ['a style', '<circle ', '<circle style="fill:red" ', ['svg/attribute']],
  ['a class', '<circle ', '<circle class="cut" ', ['svg/attribute']],
  ['a text', '</svg>', '<text>B1</text></svg>', ['svg/element', 'svg/structure']],
  ['defs', '<g id="ENGRAVE"', '<defs/><g id="ENGRAVE"', ['svg/element']],
  ['a use', '</svg>', '<use/></svg>', ['svg/element']],
  [
    'a nested group',
    '<circle ',
    '<g id="CUT_INNER" fill="none" stroke="#000000" stroke-width="0.1"/><circle ',
    ['svg/structure', 'svg/order'],
  ],
  [
    'a path outside every group',
    '</svg>',
    '<path d="M 1.000000 1.000000 L 2.000000 2.000000 Z"/></svg>',
    ['svg/structure'],
  ],
  ['a comment', '<g id="ENGRAVE"', '<!-- cut --><g id="ENGRAVE"', ['svg/structure']],
  ['a group not closed', '</g>\n</svg>', '</svg>', ['svg/structure']],
  ['a filled group', 'fill="none"', 'fill="black"', ['svg/stroke']],
  ['a thick stroke', 'stroke-width="0.1"', 'stroke-width="0.1mm"', ['svg/stroke']],
  ['a colour by name', 'stroke="#0000ff"', 'stroke="blue"', ['svg/stroke']],
  ['an unknown group', 'id="CUT_INNER"', 'id="CUT"', ['svg/group']],
  ['groups in the wrong order', 'id="ENGRAVE"', 'id="CUT_OUTER"', ['svg/order', 'svg/open-contour']],
  ['a width without a unit', 'mm" height', '" height', ['svg/size']],
  ['a width in pixels', 'mm" height', 'px" height', ['svg/size']],
  ['a viewBox of another size', 'viewBox="0 0 ', 'viewBox="0 0 1', ['svg/size']],
  ['a viewBox that begins elsewhere', 'viewBox="0 0 ', 'viewBox="1 0 ', ['svg/size']],
  ['NaN', 'cx="11.000000"', 'cx="NaN"', ['svg/number', 'svg/outside']],
  ['an exponent', 'r="3.175000"', 'r="3.175e0"', ['svg/number']],
  ['a radius of 0', 'r="3.175000"', 'r="0.000000"', ['svg/radius']],
  ['a missing radius', ' r="3.175000"', '', ['svg/attribute', 'svg/number', 'svg/radius']],
  ['a number with 3 places in a path', 'L 41.000000 31.000000', 'L 41.000 31.000000', ['svg/path']],
  ['a relative command', 'L 41.000000 31.000000', 'l 41.000000 31.000000', ['svg/path']],
  [
    'a curve',
    'L 41.000000 31.000000',
    'C 1.000000 1.000000 2.000000 2.000000 41.000000 31.000000',
    ['svg/path'],
  ],
  ['a second start', 'L 41.000000 31.000000', 'M 41.000000 31.000000', ['svg/path']],
  ['an elliptic arc', 'A 21.750000 21.750000', 'A 21.750000 20.000000', ['svg/path']],
  ['a large arc', 'A 21.750000 21.750000 0 0 0', 'A 21.750000 21.750000 0 1 0', ['svg/path']],
  ['an arc too small for its ends', 'A 21.750000 21.750000', 'A 14.000000 14.000000', ['svg/path']],
  ['an open outline', ' Z"', '"', ['svg/open-contour']],
  [
    'a side of 0.0005 mm',
    'L 1.000000 1.000000 Z',
    'L 1.000000 1.000000 L 1.000500 1.000000 Z',
    ['svg/short-segment'],
  ],
  [
    'a first point that is repeated',
    'L 1.000000 1.000000 Z',
    'L 1.000000 1.000000 L 1.000000 31.000000 Z',
    ['svg/short-segment'],
  ],
  [
    'an arc that goes the other way, off the page',
    'A 21.750000 21.750000 0 0 0 41.000000',
    'A 21.750000 21.750000 0 0 0 51.000000',
    ['svg/outside'],
  ],
  ['a line off the page', 'L 1.000000 1.000000 Z', 'L -1.000000 1.000000 Z', ['svg/outside']],
  ['half the stroke off the page', 'L 1.000000 1.000000 Z', 'L 0.040000 1.000000 Z', ['svg/outside']],
];

describe('checkSvg', () => {
  test('SVG-1, SVG-2: finds nothing in good files', () => {
    expect(checkSvg(GOOD, LAYERS)).toEqual([]);
    expect(checkSvg(writeSvg(PLATE).value, LAYERS)).toEqual([]);
  });

  test.each(damages)('SVG-2: finds %s', (_, from, to, codes) => {
    expect(GOOD).toContain(from);
    expect([...codesOf(GOOD.replace(from, to))].sort()).toEqual([...codes].sort());
  });

  test('SVG-2: finds an empty text at fault', () => {
    expect(codesOf('')).toEqual(['svg/structure']);
  });
});
