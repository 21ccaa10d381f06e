declare module 'svgdom' {
  /** A window with an empty HTML document, for drawing without a browser. */
  export function createHTMLWindow(): Window & typeof globalThis;
}
