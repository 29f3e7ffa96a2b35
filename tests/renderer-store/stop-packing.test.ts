import { expect, test } from 'vitest';
import { USUAL } from '../../core/files/output-choice.ts';
import { connectDesign } from '../../renderer/worker/connect-design.ts';
import { serveDesign } from '../../renderer/worker/serve.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';
import { inProcessLine } from './in-process-port.ts';

test('exportAll that is cancelled while sheets are packed writes no file, and the worker goes on with nothing', async () => {
  const line = inProcessLine();
  serveDesign(line.worker, STROKE_FONT);
  const client = connectDesign(
    line.client,
    () => undefined,
    (reason) => expect.fail(reason),
  );
  const choice = { ...USUAL, kinds: ['sheets'] as const };
  const exportUntil = async (mostReports: number) => {
    const stop = new AbortController();
    let [files, reports] = [0, 0];
    const { ended } = await client.exportAll(
      () => {
        files += 1;
        return Promise.resolve({ size: 0, sha256: '' });
      },
      () => {
        reports += 1;
        if (reports === mostReports) stop.abort();
      },
      stop.signal,
      { choice },
    );
    return { ended, files, reports };
  };
  client.design(firstRows(demoDraft(), 6));
  const whole = await exportUntil(Infinity);
  expect(whole.ended).toBe('done');
  expect(whole.files).toBeGreaterThan(2);
  const messages = line.sent.fromWorker.length;
  const stopped = await exportUntil(2);
  expect(stopped).toEqual({ ended: 'stopped', files: 0, reports: 2 });
  await new Promise((resolve) => {
    setTimeout(resolve, 300);
  });
  // What was on its way, and one step that had begun.
  expect(line.sent.fromWorker.length - messages).toBeLessThanOrEqual(5);
  expect(whole.reports).toBeGreaterThan(20);
});
