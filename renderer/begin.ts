import { canDraw } from './seat/picture-canvas.ts';
import { startWorker } from './worker/spawn-worker.ts';

// A script of its own before that of the program: what takes longest begins while the program is being read. A page
// that is busy cannot start a worker.
startWorker();
canDraw();
void import('./seat/SeatStage.tsx').then(
  ({ warmUp }) => warmUp(),
  () => undefined,
);
