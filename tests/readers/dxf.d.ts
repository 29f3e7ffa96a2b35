/** The npm package dxf comes without types; only what the reader uses. */
declare module 'dxf' {
  export function parseString(text: string): unknown;
}
