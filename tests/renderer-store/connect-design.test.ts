import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { OrderColumn } from '../../core/order/columns.ts';
import type { Draft } from '../../core/project/draft.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import type { Designed } from '../../core/session/types.ts';
import { connectDesign, type DesignClient, type WriteFile } from '../../renderer/worker/connect-design.ts';
import type { FromWorker, Port, ToWorker } from '../../renderer/worker/messages.ts';
import { serveDesign } from '../../renderer/worker/serve.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';
import { inProcessLine } from './in-process-port.ts';

const draft = firstRows(demoDraft(), 3);

const withCell = (of: Draft, column: OrderColumn, text: string): Draft => ({
  ...of,
  rows: of.rows.map((row, index) =>
    index === 0 ? { ...row, cells: { ...row.cells, [column]: text } } : row,
  ),
});

interface Opened {
  readonly client: DesignClient;
  readonly designs: Designed[];
  readonly failures: string[];
  /** Resolves when this many designs are there. */
  readonly until: (count: number) => Promise<Designed>;
}

/** A client with a worker's insides at the other end of the line. */
function opened(shown?: () => Promise<void>): Opened {
  const line = inProcessLine();
  serveDesign(line.worker, STROKE_FONT);
  return watched(line.client, shown);
}

function watched(port: Port<ToWorker, FromWorker>, shown?: () => Promise<void>): Opened {
  const designs: Designed[] = [];
  const failures: string[] = [];
  let waiting: (() => void)[] = [];
  const client = connectDesign(
    port,
    (designed) => {
      designs.push(designed);
      for (const check of waiting) check();
    },
    (reason) => failures.push(reason),
    shown,
  );
  const until = (count: number): Promise<Designed> =>
    new Promise((resolve) => {
      const check = (): void => {
        const last = designs.at(-1);
        if (designs.length >= count && last !== undefined) resolve(last);
      };
      waiting = [...waiting, check];
      check();
    });
  return { client, designs, failures, until };
}

const sha256 = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

const write: WriteFile = ({ content }) =>
  Promise.resolve({ size: Buffer.byteLength(content), sha256: sha256(content) });

const never = (): AbortSignal => new AbortController().signal;

describe('design', () => {
  test('of many new rows gives a first look before the whole; what is asked for then waits for the whole', async () => {
    const many = demoDraft();
    const { client, designs, until } = opened();
    client.design(many);
    const looked = await until(1);
    expect(client.isBusy()).toBe(true);
    expect(Object.keys(looked.fits)).toHaveLength(many.rows.length);
    expect(looked.jigs.length).toBeGreaterThan(0);
    expect(looked.parts).toEqual([]);
    expect(looked.isWhole).toBe(false);
    const tried = client.tryStandard(many.standard);
    const whole = await until(2);
    expect(whole.isWhole).toBe(true);
    expect(whole).toEqual(createDesignSession(STROKE_FONT).design(many, 1));
    await tried;
    // One row is no reason to look first.
    client.design(withCell(many, 'front_h', '7'));
    await until(3);
    expect(client.isBusy()).toBe(false);
    expect(designs).toHaveLength(3);
  });

  test('waits with the whole until the first look is shown, and takes a change that came meanwhile after it', async () => {
    const many = demoDraft();
    let show = (): void => undefined;
    const { client, designs, until } = opened(
      () =>
        new Promise((resolve) => {
          show = resolve;
        }),
    );
    client.design(many);
    await until(1);
    const changed = withCell(many, 'front_h', '7');
    client.design(changed);
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(designs).toHaveLength(1);
    show();
    expect(await until(3)).toEqual(createDesignSession(STROKE_FONT).design(changed, 2));
    expect(designs.map(({ parts }) => parts.length > 0)).toEqual([false, true, true]);
  });

  test('asked for a part before the first look is shown, answers from the whole design', async () => {
    const many = demoDraft();
    const whole = createDesignSession(STROKE_FONT).design(many, 1);
    const [first] = whole.parts;
    const asked = opened(() => new Promise(() => undefined));
    asked.client.design(many);
    await asked.until(1);
    expect((await asked.client.part(first?.id ?? ''))?.part.id).toBe(first?.id);
    expect(await asked.until(2)).toEqual(whole);
  });

  test('gives what a session gives, and keeps the identity of what did not change', async () => {
    const { client, until } = opened();
    client.design(draft);
    const first = await until(1);
    const next = withCell(draft, 'front_h', '7');
    client.design(next);
    const second = await until(2);
    const session = createDesignSession(STROKE_FONT);
    session.design(draft, 1);
    expect(second).toEqual(session.design(next, 2));
    expect(second.fits['r2']).toBe(first.fits['r2']);
    expect(second.fits['r1']).not.toBe(first.fits['r1']);
    expect(second.jigs).toBe(first.jigs);
  });

  test('of drafts that come in while it is busy only the newest is designed', async () => {
    const { client, designs, until } = opened();
    for (const height of ['5', '6', '7', '8', '9']) client.design(withCell(draft, 'opening_h', height));
    expect(client.isBusy()).toBe(true);
    const last = await until(2);
    expect(designs.map(({ revision }) => revision)).toEqual([1, 2]);
    expect(last.fits['r1']?.drawer.openingH).toBeCloseTo(9 * 25.4, 9);
    expect(client.isBusy()).toBe(false);
  });

  test('a fault of the program is told, and the next draft is designed', async () => {
    const { client, failures, until } = opened();
    // Rows that are no list cannot come from the program; they make the session fail.
    client.design({ ...draft, standard: { ...draft.standard, styles: JSON.parse('null') } });
    client.design(draft);
    expect(Object.keys((await until(1)).fits)).toEqual(['r1', 'r2', 'r3']);
    expect(failures).toHaveLength(1);
    expect(failures[0]).toMatch(/TypeError/);
  });
});

describe('part', () => {
  test('gives a part with its contours, and null for one that there is not', async () => {
    const { client, until } = opened();
    client.design(draft);
    const [summary] = (await until(1)).parts;
    const detail = await client.part(summary?.id ?? '');
    expect(detail?.part).toMatchObject(summary ?? {});
    expect(detail?.followed).toHaveLength(detail?.part.features.length ?? 0);
    expect(detail?.followed).not.toEqual(detail?.part.features);
    expect(await client.part('Z9-plate')).toBeNull();
  });
});

describe('exportAll', () => {
  test('hands over every file of the newest draft, the manifest last with sizes and hashes', async () => {
    const { client } = opened();
    client.design(draft);
    client.design(withCell(draft, 'note', 'newest'));
    const files = new Map<string, string | Uint8Array>();
    const progress: number[] = [];
    const result = await client.exportAll(
      (file) => {
        files.set(file.path, file.content);
        return write(file);
      },
      (done, of) => progress.push(done / of),
      never(),
    );
    expect(result).toEqual({ ended: 'done', files: files.size });
    expect([...files.keys()].at(-1)).toBe('manifest.json');
    const manifest: { files: { path: string; size: number; sha256: string }[] } = JSON.parse(
      String(files.get('manifest.json')),
    );
    const others = [...files].filter(([path]) => path !== 'manifest.json');
    expect(manifest.files.map(({ path, size, sha256: hash }) => [path, size, hash])).toEqual(
      others
        .map(([path, text]) => [path, Buffer.byteLength(text), sha256(text)] as const)
        .toSorted(([a], [b]) => (a < b ? -1 : 1)),
    );
    expect(progress.at(-1)).toBe(1);
    expect(progress).toEqual(progress.toSorted((a, b) => a - b));
  });

  test('is refused, with the reasons, when anything is an error', async () => {
    const { client } = opened();
    client.design(withCell(draft, 'qty', '0'));
    const result = await client.exportAll(write, () => undefined, never());
    expect(result.ended).toBe('refused');
    expect(result.ended === 'refused' ? result.findings.map(({ code }) => code) : []).toContain('order/qty');
  });

  test('stops between two files when it is cancelled, and the session goes on', async () => {
    const { client, until } = opened();
    client.design(draft);
    const stop = new AbortController();
    const written: string[] = [];
    const result = await client.exportAll(
      (file) => {
        written.push(file.path);
        if (written.length === 3) stop.abort();
        return write(file);
      },
      () => undefined,
      stop.signal,
    );
    expect(result).toEqual({ ended: 'stopped' });
    client.design(withCell(draft, 'opening_h', '7'));
    await until(2);
    expect(written).toHaveLength(3);
    const again = await client.exportAll(write, () => undefined, never());
    expect(again.ended).toBe('done');
  });

  test('ends as failed when a file cannot be written', async () => {
    const { client } = opened();
    client.design(draft);
    let files = 0;
    const full: WriteFile = (file) => {
      files += 1;
      return files === 2 ? Promise.reject(new Error('the disk is full')) : write(file);
    };
    const result = await client.exportAll(full, () => undefined, never());
    expect(result).toEqual({ ended: 'failed', reason: 'the disk is full' });
    expect(files).toBe(2);
  });

  test('is stopped at once by a signal that was given before', async () => {
    const { client } = opened();
    client.design(draft);
    expect(await client.exportAll(write, () => undefined, AbortSignal.abort())).toEqual({ ended: 'stopped' });
  });
});
