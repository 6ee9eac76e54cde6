type Child = Node | string | undefined | false;

type Properties<Tag extends keyof HTMLElementTagNameMap> = Partial<
  Omit<HTMLElementTagNameMap[Tag], "style" | "dataset">
> & {
  readonly aria?: Readonly<Record<string, string>>;
  readonly data?: Readonly<Record<string, string>>;
};

/** An element with properties and children; text always becomes text, never markup. */
export function h<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  { aria, data, ...properties }: Properties<Tag> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  Object.assign(element, properties);
  for (const [name, value] of Object.entries(aria ?? {})) element.setAttribute(`aria-${name}`, value);
  for (const [name, value] of Object.entries(data ?? {})) element.dataset[name] = value;
  element.append(...present(children));
  return element;
}

const present = (children: readonly Child[]): (Node | string)[] =>
  children.filter((child): child is Node | string => child !== undefined && child !== false);

export interface Choice {
  readonly value: string;
  readonly text: string;
}

/** A labelled list to choose from; `onChoose` is called with the value. */
export function chooser(
  id: string,
  label: string,
  choices: readonly Choice[],
  { value, onChoose }: { readonly value: string; readonly onChoose: (value: string) => void },
): HTMLElement {
  const select = h("select", { id }, ...choices.map((choice) => h("option", { value: choice.value }, choice.text)));
  select.value = value;
  select.addEventListener("change", () => {
    onChoose(select.value);
  });
  return h("div", { className: "field" }, h("label", { htmlFor: id }, label), select);
}

export function button(text: string, onPress: () => void, properties: Properties<"button"> = {}): HTMLButtonElement {
  const element = h("button", { type: "button", ...properties }, text);
  element.addEventListener("click", onPress);
  return element;
}

/** What is typed is told once the focus has moved on: a field that is replaced while it is moving would lose it. */
export function onTyped(input: HTMLInputElement, told: () => void): void {
  input.addEventListener("change", () => { setTimeout(told); });
}

const unfolded = new Map<string, boolean>();

/**
 * A part that opens and closes, and stays as the person left it when it is shown anew; `fill` is asked for its content
 * once it is open.
 */
export function fold(
  id: string,
  title: string,
  fill: () => readonly Child[],
  isOpenAtFirst = false,
): HTMLDetailsElement {
  const details = h(
    "details",
    { id, open: unfolded.get(id) ?? isOpenAtFirst },
    h("summary", { id: `${id}-title` }, title),
  );
  const fillOnce = (): void => {
    if (details.open && details.childElementCount === 1) details.append(...present(fill()));
  };
  details.addEventListener("toggle", () => {
    unfolded.set(id, details.open);
    fillOnce();
  });
  fillOnce();
  return details;
}

/** A part of the page, and what it is to show. */
export type Part = readonly [place: Element, children: readonly Child[]];

/**
 * Shows parts of the page anew; the field that had the focus has it again, so that the keyboard never loses its way.
 */
export function showAll(parts: readonly Part[]): void {
  const focused = document.activeElement;
  for (const [place, children] of parts) place.replaceChildren(...present(children));
  const again = focused === null || focused.id === "" ? null : document.getElementById(focused.id);
  again?.focus({ preventScroll: true });
  // What Tab has selected in a field stays selected, so that typing goes over it and not before it.
  if (isTextField(focused) && isTextField(again)) again.setSelectionRange(focused.selectionStart, focused.selectionEnd);
}

const isTextField = (element: Element | null): element is HTMLInputElement =>
  element instanceof HTMLInputElement && element.type === "text";
