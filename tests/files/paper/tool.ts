import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Runs a command-line reader on a PDF; `%` among the arguments stands for the file. Returns what it prints. */
export function runOn(pdf: Uint8Array, command: string, ...args: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const file = join(folder, 'file.pdf');
    writeFileSync(file, pdf);
    return execFileSync(
      command,
      args.map((arg) => (arg === '%' ? file : arg)),
      { encoding: 'utf8', maxBuffer: 1e9 },
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A page as Poppler draws it in SVG, neither shrunk nor shifted to whole points of paper. */
export function popplerSvg(pdf: Uint8Array, page: number): string {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const [file, svg] = [join(folder, 'file.pdf'), join(folder, 'page.svg')];
    writeFileSync(file, pdf);
    execFileSync('pdftocairo', [
      '-svg',
      '-noshrink',
      '-nocenter',
      '-f',
      `${page}`,
      '-l',
      `${page}`,
      file,
      svg,
    ]);
    return readFileSync(svg, 'utf8');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Whether a command can be run here. */
export function hasCommand(command: string): boolean {
  try {
    execFileSync(command, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
