import { describe, expect, test } from 'vitest';
import { orderRework } from '../../core/gap-view/order-rework.ts';
import type { Designed } from '../../core/session/types.ts';
import { connectDesign } from '../../renderer/worker/connect-design.ts';
import { serveDesign } from '../../renderer/worker/serve.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';
import { inProcessLine } from './in-process-port.ts';

const draft = firstRows(demoDraft(), 3);

describe('rework', () => {
  test('counts the newest draft, and says which budgets it counted', async () => {
    const line = inProcessLine();
    serveDesign(line.worker, STROKE_FONT);
    const designs: Designed[] = [];
    const client = connectDesign(
      line.client,
      (designed) => designs.push(designed),
      (reason) => expect.fail(reason),
    );
    client.design(firstRows(draft, 1));
    client.design(draft);
    const counted = await client.rework();
    const newest = designs.at(-1);
    expect(Object.keys(newest?.budgets ?? {})).toHaveLength(3);
    expect(counted?.of).toBe(newest);
    expect(counted?.answer).toEqual(orderRework(newest?.budgets ?? {}, draft.standard, newest?.uses));
    expect(counted?.answer?.rework.fronts).toBeGreaterThan(2);
  });

  test('gives null when the program fails at it, which is told', async () => {
    const line = inProcessLine();
    serveDesign(line.worker, STROKE_FONT);
    const failures: string[] = [];
    const client = connectDesign(
      line.client,
      () => undefined,
      (reason) => failures.push(reason),
    );
    // Nothing was designed yet.
    expect(await client.rework()).toBeNull();
    expect(failures).toHaveLength(1);
    client.design({ ...draft, rows: [] });
    expect((await client.rework())?.answer).toBeNull();
  });
});
