import { STROKE_FONT } from '../../shared/fonts.ts';
import { loadManifold } from './load-manifold.ts';
import { loadSolver } from './load-solver.ts';
import { serveDesign } from './serve.ts';

/** The worker: everything that an order comes to is worked out here, so that typing never waits. */
serveDesign(
  {
    post: (message) => postMessage(message),
    listen: (receive) => addEventListener('message', (event) => receive(event.data)),
  },
  STROKE_FONT,
  loadSolver,
  loadManifold,
);
