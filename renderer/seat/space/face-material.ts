import { Color, DoubleSide, ShaderMaterial, Vector3, type Plane } from 'three';
import type { Vec3 } from '../../../core/jigs/types.ts';
import { LIGHT } from '../../../core/scene/light.ts';

/** The light of `lightOn`. A side that is seen from behind is lit as if it were turned round. */
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
  float light = ${LIGHT.everywhere.toFixed(3)}
    + ${LIGHT.main.strength.toFixed(3)} * max(dot(facing, main_light), 0.0)
    + ${LIGHT.side.strength.toFixed(3)} * max(dot(facing, side_light), 0.0);
  seen = sRGBTransferOETF(vec4(saturate(fill * light * RECIPROCAL_PI), 1.0)).rgb;
}`;

const FRAGMENT = `
#include <clipping_planes_pars_fragment>
varying vec3 seen;
void main() {
  #include <clipping_planes_fragment>
  gl_FragColor = vec4(seen, 1.0);
}`;

const vector = ({ x, y, z }: Vec3): Vector3 => new Vector3(x, y, z);

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
      main_light: { value: vector(LIGHT.main.from) },
      side_light: { value: vector(LIGHT.side.from) },
    },
    side: DoubleSide,
    clipping: true,
    clippingPlanes: [...clip],
    // Edges lie on faces and are to be seen.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
