import { describe, expect, test } from 'vitest';
import { compareFits } from '../../core/session/compare-fits.ts';
import { compareMachines } from '../../core/session/compare-machines.ts';
import { connectDesign } from '../../renderer/worker/connect-design.ts';
import { newestOnly } from '../../renderer/worker/newest-only.ts';
import { serveDesign } from '../../renderer/worker/serve.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';
import { inProcessLine } from './in-process-port.ts';

const draft = firstRows(demoDraft(), 2);

function opened() {
  const line = inProcessLine();
  serveDesign(line.worker, STROKE_FONT);
  const failures: string[] = [];
  const client = connectDesign(
    line.client,
    () => undefined,
    (reason) => failures.push(reason),
  );
  return { client, failures };
}

describe('tryStandard and tryMachine', () => {
  test('give what a comparison in the page would give, of the newest draft', async () => {
    const { client } = opened();
    const { limits } = draft.standard;
    const standard = {
      ...draft.standard,
      limits: { ...limits, smallestGap: { value: 50, source: 'a test' } },
    };
    const machine = { ...draft.machine, kerf: 0.3, sheet: { ...draft.machine.sheet, thickness: 6.4 } };
    client.design(firstRows(draft, 1));
    client.design(draft);
    const [ofStandard, ofMachine] = await Promise.all([
      client.tryStandard(standard),
      client.tryMachine(machine),
    ]);
    expect(ofStandard).toEqual(compareFits(draft, { ...draft, standard }));
    expect(ofStandard?.begun.length).toBeGreaterThan(0);
    expect(ofMachine).toEqual(compareMachines(draft, machine));
    expect(ofMachine?.changed.length).toBeGreaterThan(0);
  });

  test('give null when the program fails at it, which is told, and the line goes on', async () => {
    const { client, failures } = opened();
    client.design(draft);
    // A standard without styles cannot come from the program.
    const broken = { ...draft.standard, styles: JSON.parse('null') };
    expect(await client.tryStandard(broken)).toBeNull();
    expect(failures).toHaveLength(1);
    expect((await client.tryStandard(draft.standard))?.changed).toEqual([]);
  });
});

describe('newestOnly', () => {
  test('does one task at a time, and of those that wait only the newest', async () => {
    const line = newestOnly();
    const [begun, done]: [string[], string[]] = [[], []];
    const ends = new Map<string, () => void>();
    for (const name of ['a', 'b', 'c', 'd']) {
      line(
        () => {
          begun.push(name);
          return new Promise<string>((resolve) => ends.set(name, () => resolve(name)));
        },
        (value) => done.push(value),
      );
    }
    expect([begun, done]).toEqual([['a'], []]);
    ends.get('a')?.();
    await expect.poll(() => begun).toEqual(['a', 'd']);
    ends.get('d')?.();
    await expect.poll(() => done).toEqual(['a', 'd']);
  });
});
