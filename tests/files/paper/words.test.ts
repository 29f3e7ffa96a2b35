import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const ROOT = new URL('../../../core/files/paper/', import.meta.url);

/** What is told of a fault, what programmers are told, names of sheets that settings have, and the writer's name. */
const NOT_ON_PAPER =
  /message =|RangeError|Error\(|case |'A4 or letter'|'as long as needed'|Producer:|^import |^} from /;

/** The string literals of a line of code. */
const textsIn = (line: string): readonly string[] => line.match(/'[^']*'|`[^`]*`/g) ?? [];

const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' }).filter(
  (path) => path.endsWith('.ts') && !path.startsWith('words'),
);

describe('words of the paper', () => {
  test('words of the paper stand in words/en.ts alone, so that another language is one more file', () => {
    expect(files.length).toBeGreaterThan(40);
    const stray = files.flatMap((path) => {
      const code = readFileSync(new URL(path, ROOT), 'utf8').replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
      return code
        .split('\n')
        .filter(
          (line) =>
            !NOT_ON_PAPER.test(line) && textsIn(line).some((text) => /[A-Za-z]{2,} [A-Za-z]{2,}/.test(text)),
        )
        .map((line) => `${path}: ${line.trim()}`);
    });
    expect(stray).toEqual([]);
  });

  test('words of the paper are all used', () => {
    const all = files.map((path) => readFileSync(new URL(path, ROOT), 'utf8')).join('\n');
    const words = readFileSync(new URL('words/en.ts', ROOT), 'utf8');
    const names = [...words.matchAll(/^ {2,6}(\w+): ?[^,]/gm)].flatMap(([, name]) => name ?? []);
    expect(names.length).toBeGreaterThan(60);
    // Keys that are read through a list or by what they are for: edges, columns, axes, kinds.
    const read = new Set(['left', 'right', 'top', 'bottom', 'x', 'y']);
    const unused = names.filter((name) => !read.has(name) && !new RegExp(`\\b${name}\\b`).test(all));
    expect(unused).toEqual([]);
  });
});
