import { jsonObject, standardJson, type JsonObject } from './read-standard.ts';

/** The way to a value of a document. */
export type Path = readonly (string | number)[];

/** The default standard with one value at a path changed; `undefined` takes the field out. */
export function changed(path: Path, value: unknown, file = 'face-frame-undermount.json'): JsonObject {
  const json = standardJson(file);
  let here = json;
  for (const key of path.slice(0, -1)) here = jsonObject(here[key]);
  const last = path.at(-1) ?? '';
  if (value === undefined) delete here[last];
  else here[last] = value;
  return json;
}
