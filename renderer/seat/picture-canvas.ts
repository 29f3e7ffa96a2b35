/** As three.js asks for a context, so that it takes the one that is there. */
const CONTEXT: WebGLContextAttributes = {
  alpha: true,
  antialias: true,
  depth: true,
  stencil: false,
  premultipliedAlpha: true,
  preserveDrawingBuffer: false,
  powerPreference: 'high-performance',
};

/** The newest canvas, and whether a picture is drawn on it. */
let newest: HTMLCanvasElement | null = null;
let taken = false;

/** Whether it is known that this window can draw in space. */
export const isReady = (): boolean => newest?.getContext('webgl2')?.isContextLost() === false;

/**
 * Whether this window can draw in space at all; drawing by software counts. To make a canvas with its context takes a
 * quarter of a second, so what shows it is the canvas of the next picture.
 */
export function canDraw(): boolean {
  if (!isReady()) makeCanvas();
  return newest !== null;
}

/** A canvas to draw in space on, for one picture; null where nothing can. Who takes it gives back its context. */
export function takeCanvas(): HTMLCanvasElement | null {
  if (!canDraw()) return null;
  if (taken) makeCanvas();
  taken = true;
  return newest;
}

function makeCanvas(): void {
  const canvas = document.createElement('canvas');
  // Room for pixels is made again with each change of its size.
  canvas.width = 1;
  canvas.height = 1;
  taken = false;
  try {
    newest = canvas.getContext('webgl2', CONTEXT) === null ? null : canvas;
  } catch {
    newest = null;
  }
}
