import { BoxGeometry, Mesh, OrthographicCamera, Scene, WebGLRenderer } from 'three';
import { faceMaterial } from './face-material.ts';
import { linesGeometry } from './geometry.ts';
import { hatchMaterial } from './hatch-material.ts';
import { lineMaterial } from './line-material.ts';
import { CONTACT_HATCH } from './palette.ts';
import { takeCanvas } from './picture-canvas.ts';

let waiting: WebGLRenderer | null = null;

/**
 * Makes the renderer of the next picture and draws one of each kind of thing, unseen, so that the programs for them
 * are being translated while the first seat is still worked out.
 */
export function warmUp(): void {
  if (waiting !== null) return;
  waiting = newRenderer();
  if (waiting === null) return;
  const stroke = { color: '#000', width: 1, over: false, dash: 0 };
  const filling = { ink: '#000', ground: null, hatch: CONTACT_HATCH, over: true };
  const line = linesGeometry([
    [
      { x: 0, y: 0, z: 0 },
      { x: 1, y: 1, z: 0 },
    ],
  ]);
  const face = new BoxGeometry();
  const scene = new Scene();
  // three.js forgets a program when the last material that it draws is given back: these stay with the renderer.
  scene.add(
    new Mesh(face, faceMaterial('#000', [])),
    new Mesh(line, lineMaterial(stroke, [])),
    new Mesh(face, hatchMaterial(filling, [])),
  );
  waiting.render(scene, new OrthographicCamera(-1, 1, 1, -1, -1, 1));
  face.dispose();
  line.dispose();
}

/** The renderer that was made ahead, or a new one, for one picture; null where nothing can be drawn in space. */
export function takeRenderer(): WebGLRenderer | null {
  const ready = waiting?.getContext().isContextLost() === false ? waiting : newRenderer();
  waiting = null;
  return ready;
}

function newRenderer(): WebGLRenderer | null {
  const canvas = takeCanvas();
  if (canvas === null) return null;
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.localClippingEnabled = true;
  return renderer;
}
