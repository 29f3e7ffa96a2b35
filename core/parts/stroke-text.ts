import { warning, error } from '../findings/make.ts';
import type { Finding, Outcome } from '../findings/finding.ts';
import type { PathContour, Point, Vertex } from '../geometry/types.ts';
import { mmText } from '../units/mm-text.ts';
import { rotate } from '../geometry/transform.ts';
import { fractionLayout } from './stroke-fractions.ts';
import type { StrokeFont, StrokeGlyph } from './stroke-font.ts';

export interface TextOptions {
  /** Height of a capital in mm. */
  readonly capHeight: number;
  /** Where the text stands: on its baseline, or at the middle of its capitals. */
  readonly at: Point;
  readonly align: 'left' | 'center' | 'right';
  /** What of the text's height is at `at.y`. Default `baseline`. */
  readonly vertical?: 'baseline' | 'middle';
  /** Turn about `at` in degrees, counter-clockwise. Default 0. */
  readonly angle?: number;
  /** Width of the engraved line in mm; capitals lower than ten of it get a warning. */
  readonly kerf?: number;
}

export interface StrokedText {
  readonly contours: readonly PathContour[];
  /** Sum of the glyphs' advances in mm. */
  readonly width: number;
}

/** Capitals of fewer line widths run together. The number is requirement TXT-2's; common practice, no source. */
const LEAST_KERFS = 10;

/**
 * Draws one line of text in single strokes, in mm. Inch fractions are set with raised and lowered digits.
 * A character that the font lacks becomes a box with a warning.
 *
 *     strokeText(font, '1 7/16"', { capHeight: 5, at: { x: 0, y: 0 }, align: 'left' }).value.width
 */
export function strokeText(font: StrokeFont, text: string, options: TextOptions): Outcome<StrokedText> {
  const { capHeight, at, align, vertical = 'baseline', angle = 0, kerf } = options;
  if (![capHeight, at.x, at.y, angle].every(Number.isFinite) || capHeight <= 0) {
    return { value: { contours: [], width: 0 }, findings: [badSize(text, capHeight)] };
  }
  const scale = capHeight / font.capHeight;
  const glyphs = glyphsOf(font, text);
  const advance = sumOfAdvances(glyphs);
  const drop = vertical === 'middle' ? -font.capHeight / 2 : 0;

  const contours: PathContour[] = [];
  let pen = { left: 0, center: -advance / 2, right: -advance }[align];
  for (const { glyph } of glyphs) {
    for (const stroke of glyph.strokes) {
      const vertices = stroke.map(([x, y]): Vertex => ({
        x: at.x + (pen + x) * scale,
        y: at.y + (drop + y) * scale,
        bulge: 0,
      }));
      contours.push(rotate<PathContour>({ kind: 'path', vertices }, angle, at));
    }
    pen += glyph.advance;
  }
  return {
    value: { contours, width: advance * scale },
    findings: [...missing(glyphs, text), ...tooSmall(text, capHeight, kerf)],
  };
}

/** Width of a line of text in mm: the sum of its advances. */
export const textWidth = (font: StrokeFont, text: string, capHeight: number): number =>
  (sumOfAdvances(glyphsOf(font, text)) * capHeight) / font.capHeight;

interface Placed {
  readonly character: string;
  readonly glyph: StrokeGlyph;
  readonly known: boolean;
}

/** Composed letters (é as one character) are what the font has, hence NFC. */
const glyphsOf = (font: StrokeFont, text: string): readonly Placed[] =>
  Array.from(fractionLayout(font, text.normalize('NFC')), (character) => {
    const glyph = font.glyphs[character];
    return { character, glyph: glyph ?? box(font.capHeight), known: glyph !== undefined };
  });

const sumOfAdvances = (glyphs: readonly Placed[]): number =>
  glyphs.reduce((sum, { glyph }) => sum + glyph.advance, 0);

/** What stands for a character that the font lacks: an empty box as high as a capital. */
const box = (height: number): StrokeGlyph => ({
  advance: height * 0.8,
  strokes: [
    [
      [height * 0.15, 0],
      [height * 0.65, 0],
      [height * 0.65, height],
      [height * 0.15, height],
      [height * 0.15, 0],
    ],
  ],
});

function missing(glyphs: readonly Placed[], text: string): readonly Finding[] {
  const unknown = new Set(glyphs.filter(({ known }) => !known).map(({ character }) => character));
  return [...unknown].map((character) => {
    const code = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
    return warning(
      'text/missing-glyph',
      `The engraving font has no “${character}” (${code}), in “${text}”; a box is drawn in its place.`,
      {},
      { character, code, text },
    );
  });
}

function tooSmall(text: string, capHeight: number, kerf: number | undefined): readonly Finding[] {
  if (kerf === undefined || capHeight >= LEAST_KERFS * kerf) return [];
  const least = LEAST_KERFS * kerf;
  return [
    warning(
      'text/too-small',
      `Capitals ${mmText(capHeight)} high are hard to read with a line ${mmText(kerf)} wide, in “${text}”; make them ${mmText(least)} or higher.`,
      {},
      { capHeight, kerf, least, text },
    ),
  ];
}

const badSize = (text: string, capHeight: number): Finding =>
  error(
    'text/size',
    `“${text}” can't be drawn with capitals ${capHeight} mm high; its height must be above 0 and its place a number.`,
    {},
    { capHeight: String(capHeight), text },
  );
