/** SVG text as a node of the page: parsed as XML, so that nothing in it can run. */
export function svgNode(svg: string): Node {
  const parsed = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  parsed.setAttribute("aria-hidden", "true");
  return document.importNode(parsed, true);
}
