import { Color, DoubleSide, ShaderMaterial, type Plane } from 'three';
import type { Hatch } from '../hatch.ts';

/** How a face is filled with strokes. */
export interface Filling {
  readonly ink: string;
  /** Colour between the strokes; null leaves them open. */
  readonly ground: string | null;
  readonly hatch: Hatch;
  readonly over: boolean;
}

const VERTEX = `
#include <clipping_planes_pars_vertex>
void main() {
  #include <begin_vertex>
  #include <project_vertex>
  #include <clipping_planes_vertex>
}`;

const FRAGMENT = `
#include <clipping_planes_pars_fragment>
uniform vec3 ink;
uniform vec3 ground;
uniform float open;
uniform vec2 way;
uniform float every;
uniform float stroke;
void main() {
  #include <clipping_planes_fragment>
  bool inStroke = mod(dot(gl_FragCoord.xy, way), every) < stroke;
  if (open > 0.5 && !inStroke) discard;
  gl_FragColor = vec4(inStroke ? ink : ground, 1.0);
}`;

const DIAGONAL = Math.SQRT1_2;

const WAYS = { rising: [DIAGONAL, -DIAGONAL], falling: [DIAGONAL, DIAGONAL], level: [0, 1] } as const;

/** The material of faces filled with strokes that stay the same size on the screen. */
export const hatchMaterial = (
  { ink, ground, hatch, over }: Filling,
  clip: readonly Plane[],
): ShaderMaterial =>
  new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: {
      // As they come out on the screen.
      ink: { value: new Color(ink).convertLinearToSRGB() },
      ground: { value: new Color(ground ?? ink).convertLinearToSRGB() },
      open: { value: ground === null ? 1 : 0 },
      way: { value: WAYS[hatch.way] },
      every: { value: hatch.every * window.devicePixelRatio },
      stroke: { value: hatch.stroke * window.devicePixelRatio },
    },
    side: DoubleSide,
    clipping: true,
    clippingPlanes: [...clip],
    depthTest: !over,
    depthWrite: !over,
  });
