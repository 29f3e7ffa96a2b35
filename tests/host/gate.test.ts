import { describe, expect, test } from 'vitest';
import { turnAway } from '../../electron/host/gate.ts';

const AUTHORITY = '127.0.0.1:8080';
const ORIGIN = `http://${AUTHORITY}`;
const KEY = 'k'.repeat(64);
const LOCK = { authority: AUTHORITY, key: KEY };

const post = (headers: Record<string, string>, pathname = '/message/app.about') =>
  turnAway(
    {
      method: 'POST',
      pathname,
      headers: {
        host: AUTHORITY,
        origin: ORIGIN,
        'content-type': 'application/json',
        'overhang-key': KEY,
        ...headers,
      },
    },
    LOCK,
  )?.status ?? 200;

const get = (headers: Record<string, string>, pathname = '/') =>
  turnAway({ method: 'GET', pathname, headers: { host: AUTHORITY, ...headers } }, LOCK)?.status ?? 200;

describe('turnAway', () => {
  test('lets our own page in', () => {
    expect(post({})).toBe(200);
    expect(post({ 'sec-fetch-site': 'same-origin' })).toBe(200);
    expect(post({ 'content-type': 'application/octet-stream' }, '/upload')).toBe(200);
    expect(get({})).toBe(200);
    expect(get({ 'sec-fetch-site': 'none' })).toBe(200);
    expect(get({ 'sec-fetch-site': 'same-origin' }, '/assets/main.js')).toBe(200);
  });

  test.each([
    'localhost:8080',
    '127.0.0.1',
    '127.0.0.1:8081',
    'rebound.example.invalid:8080',
    '127.0.0.1:8080.example.invalid',
    '[::1]:8080',
    '',
  ])('turns away the host name %j, as after DNS rebinding', (host) => {
    expect(post({ host, origin: `http://${host}` })).toBe(421);
    expect(get({ host })).toBe(421);
  });

  test.each([
    'https://example.invalid',
    'http://127.0.0.1:8081',
    'http://localhost:8080',
    'https://127.0.0.1:8080',
    'null',
    '',
  ])('turns away messages of the origin %j', (origin) => {
    expect(post({ origin })).toBe(403);
  });

  test('turns away a message without an origin', () => {
    const headers = { host: AUTHORITY, 'content-type': 'application/json', 'overhang-key': KEY };
    expect(turnAway({ method: 'POST', pathname: '/message/app.about', headers }, LOCK)?.status).toBe(403);
  });

  test.each(['', 'k'.repeat(63), `${'k'.repeat(63)}K`, 'k'.repeat(65), `${'k'.repeat(64)}, x`])(
    'turns away messages and uploads with the key %j, and says where the right one is',
    (key) => {
      expect(post({ 'overhang-key': key })).toBe(403);
      expect(post({ 'overhang-key': key, 'content-type': 'application/octet-stream' }, '/upload')).toBe(403);
      const { 'overhang-key': _, ...without } = { 'overhang-key': key, host: AUTHORITY, origin: ORIGIN };
      const away = turnAway({ method: 'POST', pathname: '/message/app.about', headers: without }, LOCK);
      expect(away?.reason).toContain('open the whole address that the host printed');
    },
  );

  test('gives the page itself without a key, which holds no work', () => {
    expect(get({})).toBe(200);
    expect(get({}, '/assets/main.js')).toBe(200);
  });

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', ''])(
    'turns away the type %j, which a foreign page could send unasked',
    (type) => {
      expect(post({ 'content-type': type })).toBe(415);
      expect(post({ 'content-type': type }, '/upload')).toBe(415);
    },
  );

  test('turns away what a foreign page embeds or fetches, but not a link to the page', () => {
    for (const site of ['cross-site', 'same-site']) {
      expect(get({ 'sec-fetch-site': site })).toBe(200);
      expect(get({ 'sec-fetch-site': site }, '/download/x')).toBe(403);
      expect(get({ 'sec-fetch-site': site }, '/assets/main.js')).toBe(403);
      expect(post({ 'sec-fetch-site': site })).toBe(403);
    }
  });

  test.each(['OPTIONS', 'PUT', 'DELETE', 'PATCH', 'TRACE'])('answers nothing to %s', (method) => {
    const headers = { host: AUTHORITY, origin: ORIGIN, 'content-type': 'application/json' };
    expect(turnAway({ method, pathname: '/', headers }, LOCK)?.status).toBe(405);
  });
});
