import { fc, test as property } from '@fast-check/vitest';
import { resolve, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { answerScheme } from '../../electron/main/answer-scheme.ts';
import { locatePage } from '../../electron/pages/locate-page.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { makePage } from './fakes/page.ts';

const page = makePage(temporaryFolder());
const ask = (url: string, method = 'GET') => answerScheme(page, new Request(url, { method }));

describe('answerScheme', () => {
  test.each([
    ['app://bundle/', 'text/html; charset=utf-8'],
    ['app://bundle/index.html', 'text/html; charset=utf-8'],
    ['app://bundle/index.html?a#b', 'text/html; charset=utf-8'],
    ['app://bundle/assets/main-Ab3_x.js', 'text/javascript; charset=utf-8'],
    ['app://bundle/assets/main.css', 'text/css; charset=utf-8'],
  ])('serves %s as %s', async (url, type) => {
    const response = await ask(url);
    expect([response.status, response.headers.get('content-type')]).toEqual([200, type]);
  });

  test.each([
    'app://bundle/../secret.js',
    'app://bundle/assets/../../secret.js',
    'app://bundle/%2e%2e/secret.js',
    'app://bundle/..%2fsecret.js',
    'app://bundle/..%5csecret.js',
    'app://bundle//secret.js',
    'app://bundle/.hidden.js',
    'app://bundle/assets/notes.txt',
    'app://bundle/assets',
    'app://bundle/assets/',
    'app://bundle/missing.js',
    'app://bundle/index.html%00.js',
    'app://other/index.html',
    'app://bundle.other/index.html',
    'https://bundle/index.html',
  ])('answers 404 to %s', async (url) => {
    const response = await ask(url);
    expect(response.status).toBe(404);
    expect(await response.text()).toBe(
      'There is no such file.\n'.replace('file', url.startsWith('app://bundle/') ? 'file' : 'place'),
    );
  });

  test.each(['POST', 'PUT', 'DELETE'])('answers nothing to %s', async (method) => {
    expect((await ask('app://bundle/index.html', method)).status).toBe(405);
  });

  test('sends the security headers with every answer, also with a refusal', async () => {
    for (const url of ['app://bundle/', 'app://bundle/missing.js', 'app://other/']) {
      const { headers } = await ask(url);
      expect(headers.get('content-security-policy')).toContain("default-src 'none'");
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('cache-control')).toBe('no-store');
    }
  });

  test('lets a file be kept whose name has a hash of its content', async () => {
    const { headers } = await ask('app://bundle/assets/main-Ab3_xyz9.js');
    expect(headers.get('cache-control')).toBe('private, max-age=31536000, immutable');
    expect(headers.get('content-security-policy')).toContain("default-src 'none'");
  });
});

describe('locatePage', () => {
  const piece = fc.constantFrom(
    '..',
    '.',
    '/',
    '\\',
    '%2e',
    '%2f',
    'a',
    'index.html',
    '.js',
    'C:',
    '\0',
    '//',
    '~',
    ':',
  );
  property.prop([fc.array(piece, { maxLength: 8 })], { seed: 20260304, numRuns: 3000 })(
    'never leaves its folder',
    (pieces) => {
      const found = locatePage(page, `/${pieces.join('')}`);
      if (found !== null) expect(resolve(found).startsWith(page + sep)).toBe(true);
    },
  );
});
