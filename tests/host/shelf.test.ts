import { describe, expect, test } from 'vitest';
import { readPort } from '../../electron/host/host-arguments.ts';
import { createShelf } from '../../electron/host/shelf.ts';

const file = (size: number) => ({ name: 'a', bytes: new Uint8Array(size) });

describe('createShelf', () => {
  test('the oldest make way when there are too many files', () => {
    const shelf = createShelf(2, 100);
    const [first = '', second = '', third = ''] = [1, 2, 3].map((size) => shelf.put(file(size)));
    expect([first, second, third].map((id) => shelf.get(id)?.bytes.length)).toEqual([undefined, 2, 3]);
  });

  test('the oldest make way when there are too many bytes; the newest stays', () => {
    const shelf = createShelf(9, 100);
    const ids = [40, 40, 40, 200].map((size) => shelf.put(file(size)));
    expect(ids.map((id) => shelf.get(id)?.bytes.length)).toEqual([undefined, undefined, undefined, 200]);
  });

  test('what is taken is gone, and no id is guessed', () => {
    const shelf = createShelf(2, 100);
    const id = shelf.put(file(1));
    expect(id).toMatch(/^[0-9a-f-]{36}$/);
    expect([shelf.take(id)?.bytes.length, shelf.take(id), shelf.get('')]).toEqual([1, undefined, undefined]);
  });
});

describe('readPort', () => {
  test.each([
    [[], 0],
    [['--port', '8080'], 8080],
    [['--port=0'], 0],
  ])('reads %j as %i', (words, port) => {
    expect(readPort(words)).toBe(port);
  });

  test.each([[['--port', 'http']], [['--port', '65536']], [['--port=-1']], [['8080']], [['--prot', '1']]])(
    'refuses %j',
    (words) => {
      expect(() => readPort(words)).toThrow(/port|Unexpected|Unknown/);
    },
  );
});
