import { Color, DoubleSide, ShaderMaterial, Vector3, type Plane } from 'three';

/**
 * Light on a matt face: from everywhere, from the upper left of the bench, and a little from its right. A face sends
 * on 1/pi of it in each direction (Lambert's law). A side that is seen from behind is lit as if it were turned round.
 */
const VERTEX = `
#include <common>
#include <colorspace_pars_fragment>
#include <clipping_planes_pars_vertex>
uniform vec3 fill;
uniform vec3 main_light;
uniform vec3 side_light;
varying vec3 seen;
void main() {
  #include <begin_vertex>
  #include <project_vertex>
  #include <clipping_planes_vertex>
  vec3 facing = (viewMatrix * vec4(normal, 0.0)).z < 0.0 ? -normal : normal;
  float light = 1.5 + 1.6 * max(dot(facing, main_light), 0.0) + 0.5 * max(dot(facing, side_light), 0.0);
  seen = sRGBTransferOETF(vec4(saturate(fill * light * RECIPROCAL_PI), 1.0)).rgb;
}`;

const FRAGMENT = `
#include <clipping_planes_pars_fragment>
varying vec3 seen;
void main() {
  #include <clipping_planes_fragment>
  gl_FragColor = vec4(seen, 1.0);
}`;

const MAIN_LIGHT = new Vector3(-300, -500, 900).normalize();
const SIDE_LIGHT = new Vector3(600, 200, 200).normalize();

/**
 * The material of flat faces that are only shifted, never turned. Each corner is lit instead of each pixel: on a flat
 * face it is the same, and where pictures are drawn by software it takes a tenth of the time.
 */
export const faceMaterial = (fill: string, clip: readonly Plane[]): ShaderMaterial =>
  new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: {
      fill: { value: new Color(fill) },
      main_light: { value: MAIN_LIGHT },
      side_light: { value: SIDE_LIGHT },
    },
    side: DoubleSide,
    clipping: true,
    clippingPlanes: [...clip],
    // Edges lie on faces and are to be seen.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
