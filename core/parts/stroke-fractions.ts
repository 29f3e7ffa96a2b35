import type { StrokeFont } from './stroke-font.ts';

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';
const SLASH = '\u2044';
const THIN_SPACE = '\u2009';

/** `7/16`, with the space of `1 7/16`; no part of a word, a longer number or a date like `1/2/2025`. */
const FRACTION = /(?<![\w./])(?:(\d+) )?(\d{1,3})\/(\d{1,3})(?![\w/]|\.\d)/g;

/** Inch fractions have these denominators; any other n/d stays as typed. */
const DENOMINATORS: ReadonlySet<number> = new Set([2, 4, 8, 16, 32, 64, 128]);

/**
 * Sets inch fractions with raised and lowered digits: `1 7/16"` becomes `1 ⁷⁄₁₆"`, so that it can't be
 * read as 17/16. Text in a font without those digits stays as it is.
 */
export function fractionLayout(font: StrokeFont, text: string): string {
  return text.replace(FRACTION, (typed: string, whole: string | undefined, above: string, below: string) => {
    if (!DENOMINATORS.has(Number(below))) return typed;
    const set = digits(above, RAISED) + SLASH + digits(below, LOWERED);
    if (!Array.from(set).every((character) => font.glyphs[character] !== undefined)) return typed;
    return whole === undefined ? set : whole + THIN_SPACE + set;
  });
}

const digits = (text: string, shapes: string): string =>
  Array.from(text, (digit) => shapes.charAt(Number(digit))).join('');
