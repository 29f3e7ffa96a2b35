import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { call } from '../cli/temporary.ts';
import { exampleOrder } from './readme.ts';

const FOLDER = join(import.meta.dirname, '../../assets/screens');

/** Each picture, its PDF, the page that it shows, and dots per inch that keep it legible and small. */
const PICTURES = [
  { picture: 'template', pdf: 'templates', size: 'A2', page: '4', resolution: '72' },
  { picture: 'set-up', pdf: 'instructions', size: 'A4', page: '1', resolution: '110' },
] as const;

test.for(PICTURES)(
  'the picture of paper $picture for the readme',
  async ({ picture, pdf, size, page, resolution }) => {
    const folder = mkdtempSync(join(tmpdir(), 'overhang-paper-'));
    const order = join(folder, 'kitchen.csv');
    const out = join(folder, 'jigs');
    writeFileSync(order, exampleOrder());
    const choice = ['--paper', pdf, '--paper-size', size, '--formats', 'none', '--lists', 'none'];
    expect(await call('make', order, ...choice, '--out', out)).toMatchObject({ code: 0 });
    const pages = ['-r', resolution, '-f', page, '-l', page];
    const options = ['-png', '-gray', '-singlefile', ...pages];
    const source = join(out, 'paper', `${pdf}.pdf`);
    execFileSync('pdftocairo', [...options, source, join(FOLDER, picture)]);
    rmSync(folder, { recursive: true });
    expect(statSync(join(FOLDER, `${picture}.png`)).size).toBeLessThan(120_000);
  },
);
