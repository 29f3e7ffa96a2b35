/** File name extensions of what the program opens and saves, without the dot. The first of a kind is the usual one. */
export const PROJECT_EXTENSIONS = ['overhang', 'json'] as const;
export const ORDER_EXTENSIONS = ['csv'] as const;

const ALL: ReadonlySet<string> = new Set([...PROJECT_EXTENSIONS, ...ORDER_EXTENSIONS]);

/** `Kitchen.Overhang` has `overhang`; a name without a dot, or with nothing before it, has none. */
export const extensionOf = (name: string): string =>
  /[^/\\]\.([^./\\]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';

/** Whether a file may be opened at all, by its name. */
export const isDocumentName = (name: string): boolean => ALL.has(extensionOf(name));

/** Whether a file is an order's table, by its name; others are projects. */
export const isOrderFile = (name: string): boolean =>
  ORDER_EXTENSIONS.some((known) => known === extensionOf(name));
