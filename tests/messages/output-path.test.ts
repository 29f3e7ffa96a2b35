import { fc, test as property } from '@fast-check/vitest';
import { relative, resolve, sep, win32 } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkOutputPath } from '../../electron/messages/output-path.ts';

const accepts = (path: string): boolean => {
  try {
    checkOutputPath(path);
    return true;
  } catch {
    return false;
  }
};

/** Text rich in what leads out of folders. */
const hostile = fc
  .array(
    fc.constantFrom(
      '..',
      '.',
      '/',
      '\\',
      'a',
      'dxf',
      ':',
      'C:',
      '~',
      '%2e',
      '\0',
      '\n',
      ' ',
      'con',
      'é',
      '-',
      '//',
    ),
    { maxLength: 9 },
  )
  .map((pieces) => pieces.join(''));

describe('checkOutputPath', () => {
  test.each(['manifest.json', 'dxf/B1-plate_mm.dxf', 'svg/P1 Küche, links (2)_in.svg', 'a/b/c/d.csv'])(
    'takes %s',
    (path) => {
      expect(accepts(path)).toBe(true);
    },
  );

  test.each([
    '',
    '/etc/passwd',
    '../a.dxf',
    'dxf/../../a.dxf',
    'dxf/..',
    './a.dxf',
    'a//b.dxf',
    'a/',
    'a\\b.dxf',
    '..\\a.dxf',
    'C:a.dxf',
    'C:/a.dxf',
    'a.dxf:stream',
    '~/a.dxf',
    '.hidden',
    'a.dxf\0.txt',
    'a\n.dxf',
    'nul',
    'CON.txt',
    'dxf/lpt1.dxf',
    'ends. ',
    'ends.',
    'a/b/c/d/e.csv',
    'a'.repeat(181),
  ])('refuses %j', (path) => {
    expect(accepts(path)).toBe(false);
  });

  property.prop([fc.oneof(hostile, fc.string({ unit: 'grapheme' }))], { seed: 20260301, numRuns: 3000 })(
    'takes only what stays within the folder, on any system',
    (path) => {
      if (!accepts(path)) return;
      const root = resolve('/out/folder');
      const within = relative(root, resolve(root, path));
      expect(within.startsWith('..') || within === '').toBe(false);
      expect(within.split(sep).join('/')).toBe(path);
      const windows = win32.relative('C:\\out', win32.resolve('C:\\out', path));
      expect(windows.split('\\').join('/')).toBe(path);
    },
  );
});
