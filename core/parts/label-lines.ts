import type { Label } from '../jigs/types.ts';
import type { StrokeFont } from './stroke-font.ts';
import { textWidth } from './stroke-text.ts';

/** One line of a label. */
export interface LabelLine {
  readonly text: string;
  /** mm */
  readonly capHeight: number;
  /** Middle of the capitals above the label's centre, mm. */
  readonly y: number;
}

/** Distance between two lines, from the capitals' feet to the next ones' heads, in cap heights. */
const LEADING = 0.6;

/** How much larger a title is than the rest, where the rest stays readable. */
const TITLE = 1.6;

/** mm. Rather no larger title than smaller capitals than this. */
const READABLE = 2.5;

const GAP = '  ';

/**
 * Sets a label in its room: breaks it into the lines that allow the largest capitals, up to `capHeight` mm;
 * among equals, the fewest lines. The title is larger if that leaves the rest readable.
 */
export function labelLines(font: StrokeFont, label: Label, capHeight: number): readonly LabelLine[] {
  const phrases = label.phrases.filter((phrase) => phrase !== '');
  const widthOf = lineWidths(font);
  if (label.title === undefined) return place(best(widthOf, groupings(phrases), label, capHeight, 1), 1);
  const large = best(
    widthOf,
    groupings(phrases).map((lines) => [label.title ?? '', ...lines]),
    label,
    capHeight,
    TITLE,
  );
  if (large.capHeight >= Math.min(READABLE, capHeight)) return place(large, TITLE);
  return place(best(widthOf, groupings([label.title, ...phrases]), label, capHeight, 1), 1);
}

interface Layout {
  readonly lines: readonly string[];
  /** Of all lines but a larger first one, mm. */
  readonly capHeight: number;
}

/** Widths of lines with capitals 1 mm high; ways to break phrases share most of their lines. */
function lineWidths(font: StrokeFont): (line: string) => number {
  const known = new Map<string, number>();
  return (line) => {
    const width = known.get(line) ?? textWidth(font, line, 1);
    known.set(line, width);
    return width;
  };
}

function best(
  widthOf: (line: string) => number,
  candidates: readonly (readonly string[])[],
  room: Label,
  most: number,
  first: number,
): Layout {
  let found: Layout = { lines: [], capHeight: 0 };
  for (const lines of candidates) {
    const scale = (index: number) => (index === 0 ? first : 1);
    const widest = Math.max(...lines.map((line, index) => widthOf(line) * scale(index)));
    const height = first + (lines.length - 1) * (1 + LEADING);
    const capHeight = Math.min(most, room.width / widest, room.height / height);
    const larger = capHeight > found.capHeight + 1e-9;
    const shorter = capHeight > found.capHeight - 1e-9 && lines.length < found.lines.length;
    if (larger || shorter) found = { lines, capHeight };
  }
  return found;
}

function place({ lines, capHeight }: Layout, first: number): readonly LabelLine[] {
  const heights = lines.map((_, index) => (index === 0 ? first : 1) * capHeight);
  const gap = LEADING * capHeight;
  const total = heights.reduce((sum, height) => sum + height, 0) + gap * (lines.length - 1);
  let top = total / 2;
  return lines.map((text, index) => {
    const height = heights[index] ?? capHeight;
    const y = top - height / 2;
    top -= height + gap;
    return { text, capHeight: height, y };
  });
}

/** All ways to break phrases into lines without changing their order. */
function groupings(phrases: readonly string[]): readonly (readonly string[])[] {
  const [first, ...rest] = phrases;
  if (first === undefined) return [];
  if (rest.length === 0) return [[first]];
  return groupings(rest).flatMap((lines) => {
    const [next, ...others] = lines;
    return next === undefined
      ? []
      : [
          [first, ...lines],
          [`${first}${GAP}${next}`, ...others],
        ];
  });
}
