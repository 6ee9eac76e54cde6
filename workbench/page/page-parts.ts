/** An element of the page by its id; the page and this script are written together, so that it is always there. */
export function part<Kind extends HTMLElement>(id: string, kind: new () => Kind): Kind {
  const element = document.getElementById(id);
  if (element instanceof kind) return element;
  throw new Error(`The page has no ${kind.name} called ${id}.`);
}

/** A choice of a list: what it stands for, and the words that it shows. */
export interface MenuItem {
  readonly value: string;
  readonly text: string;
}

/** Fills a list with options and marks one of them as chosen. */
export function offer(list: HTMLSelectElement, options: readonly (string | MenuItem)[], chosen: string | undefined): void {
  const items = options.map((option) => (typeof option === "string" ? { value: option, text: option } : option));
  list.replaceChildren(...items.map(({ value, text }) => new Option(text, value, false, value === chosen)));
}

/** Says one line to the person; an empty text takes it away. */
export function say(text: string): void {
  part("message", HTMLElement).textContent = text;
}
