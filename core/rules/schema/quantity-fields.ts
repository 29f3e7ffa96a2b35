import { z } from 'zod';
import { quoteText } from '../../order/quote-text.ts';
import type { LengthUnit } from '../../order/types.ts';
import { plainDecimal } from '../../units/plain-decimal.ts';

/** A number that stands for something, and the text that people write for it. */
interface Quantity {
  /** The number of a text; undefined when the text is none. */
  readonly read: (text: string) => number | undefined;
  readonly write: (value: number) => string;
  readonly least: number;
  readonly most: number;
  /** What would be accepted: `write an angle from 0 deg to 30 deg`. */
  readonly accepted: string;
}

const quantity = ({ read, write, least, most, accepted }: Quantity) =>
  z.codec(z.string(), z.number(), {
    decode(text, context) {
      const value = read(text);
      if (value !== undefined && value >= least && value <= most) return value;
      const message = `${quoteText(text)} is refused: ${accepted}`;
      context.issues.push({ code: 'custom', input: text, message });
      return z.NEVER;
    },
    encode: write,
  });

const NUMBER = String.raw`(-?\d{1,9}(?:[.,]\d{1,30})?)`;

/** Reads a number before one of the units, which are a regular expression. */
const before =
  (units: string) =>
  (text: string): number | undefined => {
    const [, number] = new RegExp(`^\\s*${NUMBER}\\s*${units}\\s*$`, 'i').exec(text) ?? [];
    return number === undefined ? undefined : Number(number.replace(',', '.'));
  };

/** An angle as text such as `3 deg`, decoded to degrees. */
export const angleText = (least: number, most: number) =>
  quantity({
    read: before('(?:deg|degrees?|°)?'),
    write: (value) => `${plainDecimal(value)} deg`,
    least,
    most,
    accepted: `write an angle from ${least} deg to ${most} deg`,
  });

/** A number without a unit as text such as `0.63`. */
export const numberText = (least: number, most: number) =>
  quantity({
    read: before(''),
    write: plainDecimal,
    least,
    most,
    accepted: `write a number from ${plainDecimal(least)} to ${plainDecimal(most)}`,
  });

/** A share as text such as `40 %`, decoded to percent. */
export const percentText = quantity({
  read: before('(?:%|percent)?'),
  write: (value) => `${plainDecimal(value)} %`,
  least: 0,
  most: 100,
  accepted: 'write a percentage from 0 % to 100 %',
});

/** A scale that people write a quantity on, beside the one that is kept. */
interface Scale {
  readonly name: string;
  readonly read: (text: string) => number | undefined;
  readonly toKept: (value: number) => number;
  readonly fromKept: (value: number) => number;
}

/** Reads a quantity on either scale; writes it on the first one on which a short number is exact. */
const onScales = (scales: readonly [Scale, Scale], unit: LengthUnit) => {
  const [kept, other] = scales;
  const preferred = unit === 'mm' ? scales : [other, kept];
  return {
    read(text: string): number | undefined {
      const scale = scales.find((one) => one.read(text) !== undefined);
      const value = scale?.read(text);
      return value === undefined ? undefined : scale?.toKept(value);
    },
    write(value: number): string {
      for (const { name, toKept, fromKept } of preferred) {
        const short = Number(fromKept(value).toFixed(SHORT));
        if (toKept(short) === value) return `${plainDecimal(short)} ${name}`;
      }
      return `${plainDecimal(value)} ${kept.name}`;
    },
  };
};

/** Decimals of a number that people would write. */
const SHORT = 3;

const same = (value: number): number => value;

/** N in a pound of force, exactly. */
const POUND = 4.4482216152605;

const FORCES: readonly [Scale, Scale] = [
  { name: 'N', read: before('(?:N|newtons?)'), toKept: same, fromKept: same },
  {
    name: 'lbf',
    read: before('(?:lbf|lbs?)'),
    toKept: (pounds) => pounds * POUND,
    fromKept: (newtons) => newtons / POUND,
  },
];

/** N. More than any front is pulled with. */
const LARGEST_FORCE = 10_000;

/** A force as text such as `50 lbf` or `222 N`, decoded to newtons. */
export const forceText = (unit: LengthUnit) =>
  quantity({
    ...onScales(FORCES, unit),
    least: 0.001,
    most: LARGEST_FORCE,
    accepted: `write a force above 0, such as 50 lbf or 222 N, of ${LARGEST_FORCE} N at most`,
  });

const TEMPERATURES: readonly [Scale, Scale] = [
  { name: 'C', read: before('(?:°|deg)?\\s*C'), toKept: same, fromKept: same },
  {
    name: 'F',
    read: before('(?:°|deg)?\\s*F'),
    toKept: (fahrenheit) => ((fahrenheit - 32) * 5) / 9,
    fromKept: (celsius) => (celsius * 9) / 5 + 32,
  },
];

/** A room's temperature as text such as `70 F` or `21 C`, decoded to degrees Celsius. */
export const temperatureText = (unit: LengthUnit) =>
  quantity({
    ...onScales(TEMPERATURES, unit),
    least: 0,
    most: 50,
    accepted: 'write a temperature such as 70 F or 21 C, from 0 C to 50 C',
  });
