/** An element of the page by its id; the page and this script are written together, so that it is always there. */
export function part<Kind extends HTMLElement>(id: string, kind: new () => Kind): Kind {
  const element = document.getElementById(id);
  if (element instanceof kind) return element;
  throw new Error(`The page has no ${kind.name} called ${id}.`);
}

/** Fills a list with options and marks one of them as chosen. */
export function offer(list: HTMLSelectElement, options: readonly string[], chosen: string | undefined): void {
  list.replaceChildren(...options.map((text) => new Option(text, text, false, text === chosen)));
}

/** Says one line to the person; an empty text takes it away. */
export function say(text: string): void {
  part("message", HTMLElement).textContent = text;
}
