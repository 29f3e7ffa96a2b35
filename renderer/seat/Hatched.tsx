import { useEffect, useMemo } from 'react';
import { Color, DoubleSide, ShaderMaterial, type BufferGeometry, type Plane } from 'three';

/** Which way the strokes run, and how close: pixels from stroke to stroke. */
export interface Hatch {
  readonly way: 'rising' | 'falling' | 'level';
  readonly every: number;
  readonly stroke: number;
}

interface HatchedProps {
  readonly geometry: BufferGeometry;
  readonly ink: string;
  /** Colour between the strokes; null leaves them open. */
  readonly ground: string | null;
  readonly hatch: Hatch;
  readonly over?: boolean;
  readonly clip?: readonly Plane[];
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
  #include <colorspace_fragment>
}`;

const DIAGONAL = Math.SQRT1_2;

const WAYS = { rising: [DIAGONAL, -DIAGONAL], falling: [DIAGONAL, DIAGONAL], level: [0, 1] } as const;

const WHOLE: readonly Plane[] = [];

/** A face filled with strokes that stay the same size on the screen. */
export function Hatched({ geometry, ink, ground, hatch, over = false, clip = WHOLE }: HatchedProps) {
  const material = useMemo(
    () =>
      new ShaderMaterial({
        vertexShader: VERTEX,
        fragmentShader: FRAGMENT,
        uniforms: {
          ink: { value: new Color(ink) },
          ground: { value: new Color(ground ?? ink) },
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
        transparent: over,
      }),
    [ink, ground, hatch, over, clip],
  );
  useEffect(() => () => material.dispose(), [material]);
  return <mesh geometry={geometry} material={material} renderOrder={over ? 19 : 0} />;
}
