import type { LengthUnit } from '../../order/types.ts';
import { addedStock, inUnit } from './added-stock.ts';
import { NO_SOURCE } from '../no-source.ts';
import { added } from './added-text.ts';

const FRACTIONS = [
  '1/16 in',
  '5/64 in',
  '3/32 in',
  '7/64 in',
  '1/8 in',
  '9/64 in',
  '5/32 in',
  '11/64 in',
  '3/16 in',
  '13/64 in',
  '7/32 in',
  '1/4 in',
];
const METRIC = [1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6].map((mm) => `${mm} mm`);

const DRIVER = `${NO_SOURCE}: measure your own`;

/** How a shop screws fronts to boxes, in round numbers of its unit. */
export function addedFastening(unit: LengthUnit) {
  const either = (inches: string, metric: string, source = NO_SOURCE) =>
    added(unit === 'in' ? inches : metric, source);
  const part = (name: string, radius: readonly [string, string], length: readonly [string, string]) => ({
    name,
    radius: either(...radius, DRIVER),
    length: either(...length, DRIVER),
  });
  return {
    stock: addedStock(unit),
    bits:
      unit === 'in'
        ? FRACTIONS.map((size) => added(inUnit(size, unit), 'fractional jobber drills, ANSI B94.11M'))
        : METRIC.map((size) => added(size, 'metric jobber drills, BS 328')),
    cover: either('1/8 in', '3 mm'),
    bite: either('7/16 in', '11 mm'),
    edgeMargin: either('1/8 in', '3 mm'),
    headRoom: either('1/16 in', '1.5 mm'),
    pullRoom: either('1/4 in', '6 mm'),
    driverRoom: either('1/16 in', '1.5 mm'),
    place: { side: either('1-1/2 in', '38 mm'), height: either('1-1/4 in', '32 mm') },
    spacing: either('12 in', '300 mm'),
    largestAngle: added('45 deg'),
    angleStep: added('1 deg'),
    holes: added(
      'clearance in the box front',
      `${NO_SOURCE}: the threads hold in the front alone, which pulls the joint shut`,
    ),
    pull: either(
      '50 lbf',
      '222 N',
      'Architectural Woodwork Standards, 1st ed. 2009, p. 374: pull test, 50 lb perpendicular to the pull',
    ),
    safety: added('3'),
    driver: [
      part('bit', ['1/8 in', '3.2 mm'], ['3/4 in', '19 mm']),
      part('holder', ['3/16 in', '5 mm'], ['2-1/4 in', '57 mm']),
      part('chuck', ['1/2 in', '13 mm'], ['1-1/4 in', '32 mm']),
      part('body', ['1-1/8 in', '29 mm'], ['6 in', '150 mm']),
    ],
    guide: {
      boreFit: either('0.005 in', '0.1 mm'),
      boreLength: added('2'),
      bushing: either('0 in', '0 mm', `${NO_SOURCE}: the bit runs in the plate itself`),
    },
  };
}
