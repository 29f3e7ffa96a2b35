import { workerBegun } from './worker/spawn-worker.ts';

/**
 * The first script of the page: it starts the worker before the page is busy with the program. The program itself is on
 * its way by then, for the page names it (`build/begin-first.ts`). It loads things by means of this script, so
 * nothing here may wait for it to have begun.
 */
async function begin(): Promise<void> {
  await workerBegun();
  const program = import('./main.tsx');
  await Promise.all([program, import('./app/stages/Seat.tsx')]);
}

void begin();
