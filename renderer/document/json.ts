/** A JSON document whose fields are edited as text. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** The way to a field: names of fields, and places in lists from 0. */
export type Path = readonly (string | number)[];

const isRecord = (value: Json | undefined): value is { readonly [key: string]: Json } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The value at a path, or undefined. */
export function valueAt(document: Json, path: Path): Json | undefined {
  let here: Json | undefined = document;
  for (const key of path) {
    if (Array.isArray(here)) here = here[Number(key)];
    else here = isRecord(here) && Object.hasOwn(here, key) ? here[key] : undefined;
  }
  return here;
}

/** The text at a path; empty when there is none. */
export function textAt(document: Json, path: Path): string {
  const value = valueAt(document, path);
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}

/** The names of the fields of the record at a path. */
export function namesAt(document: Json, path: Path): readonly string[] {
  const value = valueAt(document, path);
  return isRecord(value) ? Object.keys(value) : [];
}

/** The items of the list at a path. */
export function itemsAt(document: Json, path: Path): readonly Json[] {
  const value = valueAt(document, path);
  return Array.isArray(value) ? value : [];
}

/** A document with another value at a path; undefined takes the field out. Missing records are made. */
export function withValue(document: Json | undefined, path: Path, value: Json | undefined): Json {
  const [key, ...rest] = path;
  if (key === undefined) return value ?? null;
  if (Array.isArray(document)) {
    const place = Number(key);
    if (rest.length === 0 && value === undefined) return document.filter((_, index) => index !== place);
    const items: Json[] = [...document];
    items[place] = withValue(items[place], rest, value);
    return items;
  }
  const fields = isRecord(document) ? document : {};
  if (rest.length === 0 && value === undefined) {
    return Object.fromEntries(Object.entries(fields).filter(([name]) => name !== key));
  }
  return { ...fields, [key]: withValue(fields[key], rest, value) };
}

/** A document whose field has another name and stands in the same place. */
export function withName(document: Json, path: Path, name: string, newName: string): Json {
  const record = valueAt(document, path);
  if (!isRecord(record)) return document;
  const renamed = Object.entries(record).map(
    ([key, value]) => [key === name ? newName : key, value] as const,
  );
  return withValue(document, path, Object.fromEntries(renamed));
}

/** A path as the findings of `core/` write it: an item of a list goes by its name where it has one. */
export function fieldOf(document: Json, path: Path): string {
  return path
    .map((key, index) => {
      if (typeof key !== 'number') return key;
      const name = textAt(document, [...path.slice(0, index + 1), 'name']);
      return name === '' ? String(key) : name;
    })
    .join('.');
}
