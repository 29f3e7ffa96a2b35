import { canDraw } from './seat/picture-canvas.ts';
import { startWorker } from './worker/spawn-worker.ts';

// A script of its own before that of the program: what takes longest begins while the program is being read. A page
// that is busy cannot start a worker.
startWorker();
const ignored = (): void => undefined;
void import('./app/stages/Seat.tsx').catch(ignored);
void import('./seat/SeatStage.tsx').then(({ warmUp }) => warmUp(), ignored);
// Last: it waits for the process that draws, while the files that are asked for arrive.
canDraw();
