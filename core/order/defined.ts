type Defined<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };

/** The same record without the fields that are undefined: `defined({ a: 1, b: undefined })` is `{ a: 1 }`. */
export function defined<T extends object>(fields: T): Defined<T>;
export function defined(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
