import { Color, ShaderMaterial, Vector2, type Plane } from 'three';

/** How lines are drawn. */
export interface Stroke {
  readonly color: string;
  /** Pixels. */
  readonly width: number;
  /** Drawn over everything that stands before it. */
  readonly over: boolean;
  /** Strokes of so many mm, as hidden edges are drawn; 0 draws the line whole. */
  readonly dash: number;
}

/** Moves the corners of a strip (see `linesGeometry`) to both sides of its line; rays are parallel, so w is 1. */
const VERTEX = `
#include <clipping_planes_pars_vertex>
attribute vec3 start;
attribute vec3 end;
attribute float before;
uniform vec2 size;
uniform float width;
uniform bool over;
varying vec2 beside;
varying float run;
void main() {
  float share = clamp(position.y, 0.0, 1.0);
  vec4 from = projectionMatrix * modelViewMatrix * vec4(start, 1.0);
  vec4 to = projectionMatrix * modelViewMatrix * vec4(end, 1.0);
  vec2 way = (to.xy - from.xy) * size;
  way /= max(length(way), 1e-6);
  beside = vec2(position.x, position.y - share);
  run = before + share * distance(start, end);
  vec2 off = (way * beside.y + vec2(way.y, -way.x) * beside.x) * width / size;
  gl_Position = vec4(mix(from.xy, to.xy, share) + off, over ? -1.0 : mix(from.z, to.z, share), 1.0);
  vec4 mvPosition = modelViewMatrix * vec4(mix(start, end, share), 1.0);
  #include <clipping_planes_vertex>
}`;

/** Rounds the ends, or leaves gaps. */
const FRAGMENT = `
#include <clipping_planes_pars_fragment>
uniform vec3 ink;
uniform float dash;
varying vec2 beside;
varying float run;
void main() {
  #include <clipping_planes_fragment>
  if (beside.y != 0.0 && (dash > 0.0 || dot(beside, beside) > 1.0)) discard;
  if (dash > 0.0 && mod(run, dash * 1.7) > dash) discard;
  gl_FragColor = vec4(ink, 1.0);
}`;

/**
 * The material of lines of a width in pixels. One small program draws every kind of them: where pictures are drawn by
 * software, to translate a program, anew for each way of testing depth, takes longer than to draw with it.
 */
export function lineMaterial({ color, width, over, dash }: Stroke, clip: readonly Plane[]): ShaderMaterial {
  const size = new Vector2();
  const material = new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: {
      // As it comes out on the screen.
      ink: { value: new Color(color).convertLinearToSRGB() },
      size: { value: size },
      width: { value: width },
      over: { value: over },
      dash: { value: dash },
    },
    clipping: true,
    clippingPlanes: [...clip],
  });
  material.onBeforeRender = (renderer) => renderer.getSize(size);
  return material;
}
