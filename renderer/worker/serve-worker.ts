import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { loadManifold } from './load-manifold.ts';
import { loadSolver } from './load-solver.ts';
import type { FromWorker, Port, ToWorker } from './messages.ts';
import { serveDesign } from './serve.ts';

/** Answers as the worker does, with all that it is answered with. */
export const serveWorker = (port: Port<FromWorker, ToWorker>): void =>
  serveDesign(port, STROKE_FONT, loadSolver, loadManifold);
