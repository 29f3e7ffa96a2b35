/** A font file as a `data:` address. */
declare module '*.ttf?inline' {
  const address: string;
  export default address;
}
