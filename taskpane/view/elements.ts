type Child = Node | string | undefined | false;

type Properties<Tag extends keyof HTMLElementTagNameMap> = Partial<Omit<HTMLElementTagNameMap[Tag], "style" | "dataset">> & {
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

/** Replaces what a place shows; the field that had the focus has it again, so that the keyboard never loses its way. */
export function show(place: Element, ...children: readonly Child[]): void {
  const focused = place.contains(document.activeElement) ? document.activeElement?.id : undefined;
  place.replaceChildren(...present(children));
  if (focused) document.getElementById(focused)?.focus();
}
