import { readFileSync } from 'node:fs';

export const README = readFileSync('README.md', 'utf8');

export interface Block {
  readonly language: string;
  readonly text: string;
}

/** The fenced blocks of a text, in their order. */
export const blocksOf = (text: string): readonly Block[] =>
  [...text.matchAll(/^```(\w+)\n([\s\S]*?)^```$/gm)].map(([, language = '', block = '']) => ({
    language,
    text: block,
  }));

/** A section with its heading, up to the next heading of its level or a higher one. Throws if there is none. */
export function section(title: string): string {
  const [, hashes = '', rest = ''] = new RegExp(`^(#+) ${title}\n([\\s\\S]*)`, 'm').exec(README) ?? [];
  if (hashes === '') throw new Error(`the readme has no section "${title}"`);
  const end = rest.search(new RegExp(`^#{1,${hashes.length}} `, 'm'));
  return end < 0 ? rest : rest.slice(0, end);
}

/** The only `csv` block of a section: the order of the worked example. */
export function exampleOrder(): string {
  const [order, ...more] = blocksOf(README).filter(({ language }) => language === 'csv');
  if (order === undefined || more.length > 0) throw new Error('the readme has not exactly one order');
  return order.text;
}

/** The commands of all `sh` blocks, one a line. */
export const commands = (): readonly string[] =>
  blocksOf(README)
    .filter(({ language }) => language === 'sh')
    .flatMap(({ text }) => text.trim().split('\n'));

/** Single spaces, and no padding of tables. */
export const plain = (text: string): string => text.replaceAll(/\s+/g, ' ');
