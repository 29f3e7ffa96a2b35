/** Arithmetic on colours written #rrggbb, in linear light; the curve of sRGB is that of IEC 61966-2-1. */

type Linear = readonly [number, number, number];

const toLinear = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;

const fromLinear = (value: number): number =>
  value <= 0.0031308 ? value * 12.92 : 1.055 * value ** (1 / 2.4) - 0.055;

function linear(colour: string): Linear {
  const value = Number.parseInt(colour.slice(1), 16);
  const at = (shift: number): number => toLinear(((value >> shift) & 255) / 255);
  return [at(16), at(8), at(0)];
}

const written = (parts: Linear): string =>
  `#${parts
    .map((part) =>
      Math.round(255 * fromLinear(Math.min(1, Math.max(0, part))))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

/** A colour on the way from one to another: the one at a share of 0, the other at 1. */
export function between(one: string, other: string, share: number): string {
  const [a, b] = [linear(one), linear(other)];
  const at = (index: 0 | 1 | 2): number => a[index] + share * (b[index] - a[index]);
  return written([at(0), at(1), at(2)]);
}

/** A colour with so many times its light; what is brighter than white is white. */
export function lit(colour: string, light: number): string {
  const [r, g, b] = linear(colour);
  return written([r * light, g * light, b * light]);
}
