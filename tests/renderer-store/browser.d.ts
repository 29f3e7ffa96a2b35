/** The text of an asset, as the bundler gives it. */
declare module '*?raw' {
  const text: string;
  export default text;
}

/** Of browsers; absent in Node, as the store asks. */
declare function matchMedia(query: string): { readonly matches: boolean };
