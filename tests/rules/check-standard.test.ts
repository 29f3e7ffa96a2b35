import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { changed, type Path } from './changed.ts';

const said = (path: Path, value: unknown): readonly (readonly [string, string, string])[] =>
  parseStandard(changed(path, value), 'shop.json').findings.map(({ code, at, message }) => [
    code,
    at.field ?? '',
    message,
  ]);

const SCREW = 'fastening.stock.#6 x 1 in pan';

describe('checkStandard refuses numbers that do not go together', () => {
  test.each<[string, Path, unknown, string, string, string]>([
    [
      'a front of a wood that the table lacks',
      ['front', 'wood', 'species', 'value'],
      'black chery',
      'rules/species-unknown',
      'front.wood.species',
      'Field front.wood.species: there is no species “black chery” (did you mean black cherry?); write one of red alder, white ash,',
    ],
    [
      'an adjuster that begins above 0',
      ['slides', 'undermount', 'adjusters', 'height', 'least', 'value'],
      '1 mm',
      'rules/adjuster-range',
      'slides.undermount.adjusters.height.least',
      'Field slides.undermount.adjusters.height.least: it is above 0, but an adjuster begins where it moves nothing; write 0 or less.',
    ],
    [
      'an adjuster that ends below 0',
      ['slides', 'undermount', 'adjusters', 'side', 'most', 'value'],
      '-1 mm',
      'rules/adjuster-range',
      'slides.undermount.adjusters.side.most',
      'Field slides.undermount.adjusters.side.most: it is below 0, but an adjuster begins where it moves nothing; write 0 or more.',
    ],
    [
      'a step of more than the whole range',
      ['slides', 'undermount', 'adjusters', 'side', 'step', 'value'],
      '3.1 mm',
      'rules/adjuster-step',
      'slides.undermount.adjusters.side.step',
      'Field slides.undermount.adjusters.side.step: one step is more than the whole range; write a smaller one, or 0 where it is not known.',
    ],
    [
      'dry air that is damper than the damp',
      ['front', 'wood', 'dry', 'humidity', 'value'],
      '56 %',
      'rules/air-order',
      'front.wood.dry.humidity',
      'Field front.wood.dry.humidity: the dry air is damper than the damp air; write a smaller humidity.',
    ],
    [
      'a shop damper than the house',
      ['front', 'wood', 'shop', 'humidity', 'value'],
      '56 %',
      'rules/air-order',
      'front.wood.shop.humidity',
      'Field front.wood.shop.humidity: the air of the shop is outside the air that the fronts live in; write a humidity between dry and damp.',
    ],
    [
      'a groove that comes out at the face',
      ['front', 'groove', 'width', 'value'],
      '1/2 in',
      'rules/groove-outside',
      'front.groove.width',
      'Field front.groove.width: the groove, with the wood behind it, is no thinner than the front; write a narrower one, or less behind it.',
    ],
    [
      'a box no deeper than its front',
      ['box', 'depth', 'value'],
      '5/8 in',
      'rules/box-depth',
      'box.depth',
      'Field box.depth: the box is no deeper than its front is thick; write a larger depth.',
    ],
    [
      'no screws',
      ['fastening', 'stock'],
      [],
      'rules/fastening-empty',
      'fastening.stock',
      'Field fastening.stock: the list is empty; write one at least.',
    ],
    [
      'a root as thick as the screw',
      ['fastening', 'stock', 0, 'root', 'value'],
      '0.138 in',
      'rules/screw-root',
      `${SCREW}.root`,
      `Field ${SCREW}.root: it is no thinner than the screw over its threads; write less.`,
    ],
    [
      'a head no wider than the screw',
      ['fastening', 'stock', 0, 'headDiameter', 'value'],
      '0.138 in',
      'rules/screw-head',
      `${SCREW}.headDiameter`,
      `Field ${SCREW}.headDiameter: the head is no wider than the screw; write more.`,
    ],
    [
      'a thread longer than the screw',
      ['fastening', 'stock', 0, 'thread', 'value'],
      '1-1/64 in',
      'rules/screw-thread',
      `${SCREW}.thread`,
      `Field ${SCREW}.thread: the thread is longer than the screw; write the length of the screw at most.`,
    ],
    [
      'a screw of the name of another',
      ['fastening', 'stock', 1, 'name'],
      '#6 X 1 IN pan',
      'rules/name-twice',
      'fastening.stock.#6 X 1 IN pan',
      'Field fastening.stock.#6 X 1 IN pan: “#6 x 1 in pan” is the same name; names differ in more than their case.',
    ],
    [
      'bits that are not from thin to thick',
      ['fastening', 'bits', 2, 'value'],
      '5/64 in',
      'rules/bits-order',
      'fastening.bits.2',
      'Field fastening.bits.2: it is no thicker than the bit before it; write them from thin to thick, each once.',
    ],
    [
      'a bushing that no bit goes through',
      ['fastening', 'guide', 'bushing', 'value'],
      '1/16 in',
      'rules/bushing-thin',
      'fastening.guide.bushing',
      'Field fastening.guide.bushing: it is no thicker than the thinnest bit, which runs in it; write its outer diameter, or 0 for none.',
    ],
    [
      'a step of more than the largest angle',
      ['fastening', 'angleStep', 'value'],
      '46 deg',
      'rules/angle-step',
      'fastening.angleStep',
      'Field fastening.angleStep: one step is more than the largest angle; write a smaller one.',
    ],
    [
      'a knob with a distance of holes',
      ['pulls', 'knob', 'centers', 'value'],
      '64 mm',
      'rules/pull-centers',
      'pulls.knob.centers',
      'Field pulls.knob.centers: one hole has no distance from another; write 0, or two holes.',
    ],
    [
      'a bar whose holes are one',
      ['pulls', 'bar', 'centers', 'value'],
      '4 mm',
      'rules/pull-centers',
      'pulls.bar.centers',
      'Field pulls.bar.centers: two holes this near each other are one; write the distance of their middles.',
    ],
  ])('%s', (_, path, value, code, field, message) => {
    const found = said(path, value);
    expect(found.map((one) => one.slice(0, 2))).toEqual([[code, field]]);
    expect(found[0]?.[2].slice(0, message.length)).toBe(message);
  });

  test('a sort of pulls whose name a cell cannot begin with', () => {
    const bar = {
      holes: 1,
      centers: { value: '0', source: 'x' },
      holeDiameter: { value: '5 mm', source: 'x' },
      height: { from: 'top', distance: { value: '2', source: 'x' } },
      pairFrom: { value: '30', source: 'x' },
    };
    expect(said(['pulls', 'edge pull'], bar)).toEqual([
      [
        'rules/pull-name',
        'pulls.edge pull',
        'Field pulls.edge pull: a pull cell begins with this name, so it is one word without a comma or semicolon.',
      ],
    ]);
  });
});
