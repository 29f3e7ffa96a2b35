/**
 * Writes sans.json in the shape of core/parts/stroke-font.ts from the Hershey data of the npm package
 * `hersheytext` and our own additions. Run once, and again after a change: `node assets/stroke-font/convert.mjs`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { accented, fractions, latinSigns, REPLACED, signs } from './additions.mjs';
import { glyph, parseSource } from './glyph-tools.mjs';

/** The sans of single strokes; glyphs from `!` on, capitals 21 units high. */
const SOURCE_FONT = 'futural';
const FIRST = 33;
const LAST = 126;

const require = createRequire(import.meta.url);
const source = JSON.parse(readFileSync(require.resolve('hersheytext/hersheytext.json'), 'utf8'))[SOURCE_FONT];

const plain = { ' ': glyph(16), '\u00a0': glyph(16) };
for (let code = FIRST; code <= LAST; code += 1) {
  const { d, o } = source.chars[code - FIRST];
  plain[String.fromCharCode(code)] = parseSource(d, o);
}
// The source draws these two with second lines beside the first; single strokes are left.
plain['@'].strokes = [plain['@'].strokes[0], plain['@'].strokes[2]];
plain.$.strokes = [
  [
    [10, 25],
    [10, -4],
  ],
  ...plain.$.strokes.slice(2),
];

const first = { ...plain, ...REPLACED };
const second = { ...first, ...accented(first), ...latinSigns(first), ...signs(first) };
const glyphs = { ...second, ...fractions(second) };

const round = (value) => Math.round(value * 1000) / 1000 || 0;
const topOfH = Math.max(...glyphs.H.strokes.flat().map(([, y]) => y));

const lines = Object.keys(glyphs)
  .sort((a, b) => a.codePointAt(0) - b.codePointAt(0))
  .map((character) => {
    const { advance, strokes } = glyphs[character];
    const rounded = { advance: round(advance), strokes: strokes.map((s) => s.map((p) => p.map(round))) };
    return `    ${JSON.stringify(character)}: ${JSON.stringify(rounded)}`;
  });
const json = `{\n  "name": "Overhang Sans",\n  "capHeight": ${topOfH},\n  "glyphs": {\n${lines.join(',\n')}\n  }\n}\n`;
writeFileSync(new URL('sans.json', import.meta.url), json);
