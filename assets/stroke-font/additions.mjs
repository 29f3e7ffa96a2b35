/**
 * Our own strokes, in the source's units (capitals 21 high, small letters 14, y up from the baseline):
 * glyphs that the source lacks, and those of its ASCII that are doubled, misplaced or too wide.
 */
import { glyph, join, mapPoints, shift, widen, withoutShortSegments } from './glyph-tools.mjs';

/** Twelve short sides of a circle, closed. */
function circle(cx, cy, r, sides = 12) {
  const points = [];
  for (let i = 0; i <= sides; i += 1) {
    const angle = (2 * Math.PI * (i % sides)) / sides;
    points.push([cx + r * Math.cos(angle), cy + r * Math.sin(angle)]);
  }
  return { advance: 0, strokes: [points] };
}

const dot = (x, y) => glyph(0, `${x},${y - 1} ${x - 1},${y} ${x},${y + 1} ${x + 1},${y} ${x},${y - 1}`);

/** ASCII drawn anew: the source's are doubled strokes, float off the baseline, or are as wide as an M. */
export const REPLACED = {
  '"': glyph(12, '4,21 4,14 | 8,21 8,14'),
  "'": glyph(8, '4,21 4,14'),
  '#': glyph(20, '9,21 5,0 | 15,21 11,0 | 3,14 18,14 | 2,7 17,7'),
  '*': glyph(16, '8,21 8,9 | 3,18 13,12 | 13,18 3,12'),
  '+': glyph(22, '11,3 11,17 | 4,10 18,10'),
  ',': glyph(8, '5,1 4,0 3,1 4,2 5,1 5,-1 3,-4'),
  '-': glyph(14, '3,9 11,9'),
  '.': { ...dot(4, 1), advance: 8 },
  '/': glyph(16, '2,-4 14,24'),
  ':': { ...join(dot(4, 12), dot(4, 1)), advance: 8 },
  ';': join(glyph(8, '5,1 4,0 3,1 4,2 5,1 5,-1 3,-4'), dot(4, 12)),
  '<': glyph(22, '18,17 4,10 18,3'),
  '=': glyph(22, '4,13 18,13 | 4,7 18,7'),
  '>': glyph(22, '4,17 18,10 4,3'),
  '[': glyph(14, '11,25 5,25 5,-5 11,-5'),
  '\\': glyph(16, '2,24 14,-4'),
  ']': glyph(14, '3,25 9,25 9,-5 3,-5'),
  '^': glyph(16, '3,14 8,21 13,14'),
  _: glyph(18, '1,-4 17,-4'),
  '`': glyph(8, '3,21 5,17'),
  l: glyph(9, '4,21 4,3 5,1 7,0'),
  '{': glyph(14, '10,25 8,24 7,22 7,13 6,11 4,10 6,9 7,7 7,-2 8,-4 10,-5'),
  '|': glyph(8, '4,25 4,-5'),
  '}': glyph(14, '4,25 6,24 7,22 7,13 8,11 10,10 8,9 7,7 7,-2 6,-4 4,-5'),
  '~': glyph(22, '3,8 4,10 6,12 8,12 10,11 12,9 14,8 16,8 18,10 19,12'),
};

/** Marks over and under letters, about x 0: the foot of those above is at y 0. */
const MARKS = {
  grave: glyph(0, '-2,4 2,0'),
  acute: glyph(0, '-2,0 2,4'),
  circumflex: glyph(0, '-4,0 0,4 4,0'),
  tilde: glyph(0, '-5,1 -4,3 -2,3 2,1 4,1 5,3'),
  diaeresis: join(dot(-3, 2), dot(3, 2)),
  ring: circle(0, 2, 2, 8),
  cedilla: glyph(0, '0,0 0,-2 2,-3 2,-5 0,-6 -3,-6'),
};

/** Height at which a mark stands over capitals and over small letters. */
const OVER_CAPITAL = 23;
const OVER_SMALL = 17;

/** letter: base letter, mark, middle of the base letter. */
const ACCENTED = {
  ...marked('A', 9, { À: 'grave', Á: 'acute', Â: 'circumflex', Ã: 'tilde', Ä: 'diaeresis', Å: 'ring' }),
  ...marked('C', 11, { Ç: 'cedilla' }),
  ...marked('E', 10, { È: 'grave', É: 'acute', Ê: 'circumflex', Ë: 'diaeresis' }),
  ...marked('I', 4, { Ì: 'grave', Í: 'acute', Î: 'circumflex', Ï: 'diaeresis' }),
  ...marked('N', 11, { Ñ: 'tilde' }),
  ...marked('O', 11, { Ò: 'grave', Ó: 'acute', Ô: 'circumflex', Õ: 'tilde', Ö: 'diaeresis' }),
  ...marked('U', 11, { Ù: 'grave', Ú: 'acute', Û: 'circumflex', Ü: 'diaeresis' }),
  ...marked('Y', 9, { Ý: 'acute' }),
  ...marked('a', 9.5, { à: 'grave', á: 'acute', â: 'circumflex', ã: 'tilde', ä: 'diaeresis', å: 'ring' }),
  ...marked('c', 9.5, { ç: 'cedilla' }),
  ...marked('e', 9, { è: 'grave', é: 'acute', ê: 'circumflex', ë: 'diaeresis' }),
  ...marked('i', 4, { ì: 'grave', í: 'acute', î: 'circumflex', ï: 'diaeresis' }),
  ...marked('n', 9.5, { ñ: 'tilde' }),
  ...marked('o', 9.5, { ò: 'grave', ó: 'acute', ô: 'circumflex', õ: 'tilde', ö: 'diaeresis' }),
  ...marked('u', 9.5, { ù: 'grave', ú: 'acute', û: 'circumflex', ü: 'diaeresis' }),
  ...marked('y', 8, { ý: 'acute', ÿ: 'diaeresis' }),
};

function marked(letter, middle, marks) {
  return Object.fromEntries(
    Object.entries(marks).map(([accented, mark]) => [accented, { letter, middle, mark }]),
  );
}

/** Accented letters from the plain ones. An i loses its dot; I and i get room for their mark. */
export function accented(plain) {
  const made = {};
  for (const [letter, { letter: base, middle, mark }] of Object.entries(ACCENTED)) {
    const under = mark === 'cedilla';
    const height = under ? 0 : base === base.toUpperCase() ? OVER_CAPITAL : OVER_SMALL;
    const body = base === 'i' ? glyph(8, '4,14 4,0') : plain[base];
    const whole = join(body, shift(MARKS[mark], middle, mark === 'ring' ? height - 1 : height));
    made[letter] = base === 'I' || base === 'i' ? widen(whole, 4) : whole;
  }
  return made;
}

/** Upside down, hanging from the height of small letters, for ¿ and ¡. */
const turned = (source) => mapPoints(source, ([x, y]) => [source.advance - x, 14 - y]);

/** Latin-1 letters that are no accented letter, and the other signs of Latin-1 that a shop writes. */
export function latinSigns(plain) {
  return {
    '¡': turned(plain['!']),
    '¿': turned(plain['?']),
    '¢': join(plain.c, glyph(0, '9.5,17 9.5,-3')),
    '£': glyph(20, '16,17 15,19 13,21 10,21 8,20 7,18 7,14 8,10 8,6 7,3 4,0 16,0 | 4,10 13,10'),
    '¥': join(plain.Y, glyph(0, '3,9 15,9 | 3,5 15,5')),
    '·': { ...dot(4, 9), advance: 8 },
    '«': glyph(18, '8,13 3,8 8,3 | 15,13 10,8 15,3'),
    '»': glyph(18, '3,13 8,8 3,3 | 10,13 15,8 10,3'),
    '×': glyph(22, '5,4 17,16 | 17,4 5,16'),
    '÷': join(glyph(22, '4,10 18,10'), dot(11, 16), dot(11, 4)),
    '±': glyph(22, '11,6 11,18 | 5,12 17,12 | 4,2 18,2'),
    '°': { ...circle(5, 18, 3, 12), advance: 10 },
    µ: glyph(20, '4,14 4,-7 | 4,4 5,1 7,0 10,0 12,1 15,4 | 15,14 15,0'),
    Æ: glyph(26, '13,21 1,0 | 23,21 13,21 13,0 23,0 | 13,11 20,11 | 5,7 13,7'),
    æ: join(
      glyph(30, '15,11 13,13 11,14 8,14 6,13 4,11 3,8 3,6 4,3 6,1 8,0 11,0 13,1 15,3'),
      shift(plain.e, 12),
    ),
    Ð: join(plain.D, glyph(0, '0,11 9,11')),
    ð: join(plain.o, glyph(0, '6,21 9,19 12,16 14,13 16,8 | 5,16 13,20')),
    Ø: join(plain.O, glyph(0, '3,-2 19,23')),
    ø: join(plain.o, glyph(0, '3,-2 16,16')),
    Þ: glyph(20, '4,21 4,0 | 4,16 13,16 16,15 17,14 18,12 18,9 17,7 16,6 13,5 4,5'),
    þ: glyph(18, '4,21 4,-7 | 4,11 6,13 8,14 11,14 13,13 15,11 16,8 16,6 15,3 13,1 11,0 8,0 6,1 4,3'),
    ß: glyph(18, '4,0 4,16 5,19 7,21 10,21 12,20 13,18 13,16 12,14 9,12 12,11 14,9 15,7 15,4 14,2 12,0 8,0'),
    ª: small(plain.a, 0.6, 9, 12),
    º: small(plain.o, 0.6, 9, 12),
  };
}

/** Signs beyond Latin-1. */
export function signs(plain) {
  const arrowRight = glyph(26, '3,9 23,9 | 17,14 23,9 17,4');
  const arrowUp = glyph(18, '9,-1 9,20 | 4,14 9,20 14,14');
  const diameter = join(circle(11, 10, 8, 20), glyph(0, '2,1 20,19'));
  return {
    '\u2009': glyph(6),
    '–': glyph(18, '2,9 16,9'),
    '—': glyph(26, '2,9 24,9'),
    '−': glyph(22, '4,10 18,10'),
    '‘': glyph(8, '5,21 3,18 3,15'),
    '’': glyph(8, '5,21 5,18 3,15'),
    '“': glyph(13, '5,21 3,18 3,15 | 10,21 8,18 8,15'),
    '”': glyph(13, '5,21 5,18 3,15 | 10,21 10,18 8,15'),
    '…': { ...join(dot(4, 1), dot(11, 1), dot(18, 1)), advance: 22 },
    '•': { ...circle(7, 9, 3, 8), advance: 14 },
    '′': glyph(8, '6,21 3,14'),
    '″': glyph(13, '6,21 3,14 | 11,21 8,14'),
    '⌀': { ...diameter, advance: 22 },
    '→': arrowRight,
    '←': mapPoints(arrowRight, ([x, y]) => [26 - x, y]),
    '↑': arrowUp,
    '↓': mapPoints(arrowUp, ([x, y]) => [x, 19 - y]),
    '↔': glyph(30, '3,9 27,9 | 9,14 3,9 9,4 | 21,14 27,9 21,4'),
    '≤': glyph(22, '18,19 4,12 18,5 | 4,2 18,2'),
    '≥': glyph(22, '4,19 18,12 4,5 | 4,2 18,2'),
    μ: glyph(20, '4,14 4,-7 | 4,4 5,1 7,0 10,0 12,1 15,4 | 15,14 15,0'),
    // Stands between raised and lowered digits, hence narrower than it is wide.
    '⁄': glyph(8, '-2.5,-2 10.5,23'),
    ...fractionDigits(plain),
  };
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';
/** Size of a fraction's digits against full ones, and how far the raised ones stand above the line. */
const FRACTION_SCALE = 0.7;
const FRACTION_RISE = 21 * (1 - FRACTION_SCALE);
const FRACTION_ADVANCE = 13;

function fractionDigits(plain) {
  const made = {};
  for (let digit = 0; digit <= 9; digit += 1) {
    made[RAISED[digit]] = small(plain[digit], FRACTION_SCALE, FRACTION_RISE, FRACTION_ADVANCE);
    made[LOWERED[digit]] = small(plain[digit], FRACTION_SCALE, 0, FRACTION_ADVANCE);
  }
  return made;
}

/** Smaller and raised, in the middle of its advance, without the segments that became too short. */
function small(source, scale, rise, advance) {
  const sideways = (advance - source.advance * scale) / 2;
  const scaled = mapPoints(source, ([x, y]) => [x * scale + sideways, y * scale + rise]);
  return { advance, strokes: scaled.strokes.map((stroke) => withoutShortSegments(stroke, 0.9)) };
}

const FRACTIONS = {
  '½': [1, 2],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** ½ and its like, set as strokeText sets 1/2: raised digit, slash, lowered digit. */
export function fractions(have) {
  const made = {};
  for (const [sign, [above, below]] of Object.entries(FRACTIONS)) {
    const parts = [have[RAISED[above]], have['⁄'], have[LOWERED[below]]];
    const strokes = [];
    let x = 0;
    for (const part of parts) {
      strokes.push(...shift(part, x).strokes);
      x += part.advance;
    }
    made[sign] = { advance: x + 2, strokes };
  }
  return made;
}
