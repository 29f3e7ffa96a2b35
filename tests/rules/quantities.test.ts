import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { changed, type Path } from './changed.ts';
import { jsonObject } from './read-standard.ts';

const AIR: Path = ['front', 'wood', 'dry', 'temperature', 'value'];
const HUMIDITY: Path = ['front', 'wood', 'dry', 'humidity', 'value'];
const PULL: Path = ['fastening', 'pull', 'value'];
const ANGLE: Path = ['fastening', 'largestAngle', 'value'];
const GRAVITY: Path = ['species', 'hard maple', 'specificGravity', 'value'];
const SIDE: Path = ['slides', 'undermount', 'adjusters', 'side', 'least', 'value'];

const METRIC = 'frameless-undermount.json';

const valueOf = (standard: ShopStandard, path: Path): unknown =>
  path.reduce<unknown>((here, key) => jsonObject(here)[key], standard);

const written = (standard: ShopStandard, path: Path): unknown =>
  path.reduce<unknown>((here, key) => jsonObject(here)[key], JSON.parse(writeStandard(standard)));

function read(path: Path, text: string, file?: string): ShopStandard {
  const { value, findings } = parseStandard(changed(path, text, file), 'shop.json');
  expect(findings).toEqual([]);
  if (value === null) throw new Error('unreachable');
  return value;
}

describe('parseStandard reads quantities as people write them, and writeStandard writes them so', () => {
  // One pound of force is 4.4482216152605 N exactly: a pound of 0.45359237 kg (1959) at 9.80665 m/s².
  test.each<[string, Path, string, number, string]>([
    ['pounds of force', PULL, '50 lbf', 0.45359237 * 9.80665 * 50, '50 lbf'],
    ['pounds as the shop says them', PULL, '40lb', 0.45359237 * 9.80665 * 40, '40 lbf'],
    ['newtons', PULL, '222 N', 222, '222 N'],
    // 68 F is 20 C, 32 F is 0 C: the scales' own definition.
    ['degrees Fahrenheit', AIR, '68 °F', 20, '68 F'],
    ['freezing', AIR, '32F', 0, '32 F'],
    ['degrees Celsius', AIR, '21 C', 21, '69.8 F'],
    ['a decimal comma', AIR, '21,25 c', 21.25, '70.25 F'],
    ['percent', HUMIDITY, '28%', 28, '28 %'],
    ['percent without its sign', HUMIDITY, '28.5', 28.5, '28.5 %'],
    ['an angle', ANGLE, '30°', 30, '30 deg'],
    ['an angle without its unit', ANGLE, '22.5', 22.5, '22.5 deg'],
    ['a plain number', GRAVITY, '0,7', 0.7, '0.7'],
    ['a length below 0', SIDE, '-1/16 in', -1.5875, '-1/16 in'],
    ['a length below 0 with a true minus', SIDE, '−1.5 mm', -1.5, '-1.5 mm'],
  ])('%s', (_, path, text, value, back) => {
    const standard = read(path, text);
    expect(valueOf(standard, path)).toBeCloseTo(value, 9);
    expect(written(standard, path)).toBe(back);
  });

  test('a standard in millimetres is written in newtons and degrees Celsius', () => {
    expect(written(read(PULL, '222 N', METRIC), PULL)).toBe('222 N');
    expect(written(read(AIR, '68 F', METRIC), AIR)).toBe('20 C');
  });

  const TEMPERATURE = 'write a temperature such as 70 F or 21 C, from 0 C to 50 C';
  const FORCE = 'write a force above 0, such as 50 lbf or 222 N, of 10000 N at most';
  test.each<[Path, string, string]>([
    [PULL, '50', FORCE],
    [PULL, '50 kg', FORCE],
    [PULL, '0 N', FORCE],
    [PULL, '11000 N', FORCE],
    [AIR, '70', TEMPERATURE],
    [AIR, '21 K', TEMPERATURE],
    [AIR, '-10 C', TEMPERATURE],
    [HUMIDITY, '101 %', 'write a percentage from 0 % to 100 %'],
    [HUMIDITY, 'dry', 'write a percentage from 0 % to 100 %'],
    [ANGLE, '61 deg', 'write an angle from 0 deg to 60 deg'],
    [GRAVITY, '0.7 in', 'write a number from 0.05 to 1.5'],
    [GRAVITY, '7', 'write a number from 0.05 to 1.5'],
    [GRAVITY, '1e-1', 'write a number from 0.05 to 1.5'],
  ])('at %j, %j is refused', (path, text, accepted) => {
    const { value, findings } = parseStandard(changed(path, text), 'shop.json');
    expect(value).toBeNull();
    expect(findings.map(({ message }) => message)).toEqual([
      `Field ${path.join('.')}: “${text}” is refused: ${accepted}.`,
    ]);
  });
});
