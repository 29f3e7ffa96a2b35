/** Whether the path of a module, from the root on, is one of these. */
const isOf =
  (...paths: readonly RegExp[]) =>
  (id: string): boolean =>
    paths.some((path) => path.test(id.replaceAll('\\', '/')));

/** What `renderer/begin.ts` is made of, with the bundler's own way to load files; it waits for nothing else. */
export const BEGIN = isOf(/vite\/preload-helper/, /renderer\/(?:begin|worker\/spawn-worker)\.ts$/);

/** What draws a seat flat: asked for by the first screen as soon as it is there, and kept in one file for that. */
export const SEAT = isOf(
  /core\/(?:scene|geometry|units)\//,
  /core\/findings\/make/,
  /core\/jigs\/(?:edge-frame|lip|proportions|vec3|aids\/aid-frame)\.ts$/,
  /core\/fastening\/(?:box-walls|corner-frame|depth-stop)\.ts$/,
  /renderer\/(?:app\/useReducedMotion|drawing\/useRoom|seat\/[^/]+)\.tsx?$/,
  /node_modules\/clipper2-ts\//,
);
