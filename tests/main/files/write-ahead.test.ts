import { describe, expect, test } from 'vitest';
import type { BundleFile } from '../../../core/bundle.ts';
import type { ListedFile } from '../../../core/files/manifest.ts';
import { writeAhead } from '../../../electron/files/write-ahead.ts';

const fileOf = (index: number): BundleFile => ({ path: `f${index}`, content: 'x' });

const listed = ({ path }: BundleFile): ListedFile => ({ path, size: 1, sha256: '' });

const soon = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 1);
  });

describe('writeAhead', () => {
  test('writes several files at once, never more than sixteen, and all of them', async () => {
    let [now, most] = [0, 0];
    const writes = writeAhead({
      async write(file) {
        now += 1;
        most = Math.max(most, now);
        await soon();
        now -= 1;
        return listed(file);
      },
    });
    for (let index = 0; index < 50; index += 1) await writes.put(fileOf(index));
    const all = await writes.all();
    expect(all.map(({ path }) => path).toSorted()).toEqual(
      Array.from({ length: 50 }, (_, index) => `f${index}`).toSorted(),
    );
    expect(most).toBeGreaterThan(1);
    expect(most).toBeLessThanOrEqual(16);
  });

  test('takes no more files once one could not be written, and ends when nothing is under way', async () => {
    let under = 0;
    const writes = writeAhead({
      async write(file) {
        under += 1;
        await soon();
        under -= 1;
        if (file.path === 'f3') throw new Error('ENOSPC');
        return listed(file);
      },
    });
    const putAll = async (): Promise<void> => {
      for (let index = 0; index < 100; index += 1) await writes.put(fileOf(index));
    };
    await expect(putAll()).rejects.toThrow('ENOSPC');
    await writes.ended();
    expect(under).toBe(0);
    await expect(writes.all()).rejects.toThrow('ENOSPC');
  });
});
