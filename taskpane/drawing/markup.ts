const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Characters that XML 1.0 cannot hold at all, however they are written. */
const forbidden =
  // eslint-disable-next-line no-control-regex -- they are named to be taken out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Words from the sheet as text of the picture: they can never become markup. */
export const escaped = (text: string): string =>
  text.replaceAll(forbidden, "").replaceAll(/[&<>"']/g, (character) => entities[character] ?? "");

/** Pixels at one decimal, so that the same log draws the same bytes everywhere. */
export const px = (value: number): string => String(Math.round(value * 10) / 10 + 0);

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element; attributes left `undefined` are left out. Children are markup already. */
export function element(name: string, attributes: Attributes, children = ""): string {
  let written = "";
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) written += ` ${key}="${typeof value === "number" ? px(value) : escaped(value)}"`;
  }
  return children === "" ? `<${name}${written}/>` : `<${name}${written}>${children}</${name}>`;
}

/** Words at a place. */
export const words = (text: string, attributes: Attributes): string => element("text", attributes, escaped(text));

/** About how wide a text is drawn: 0.56 of its height a letter in the system's sans-serif. */
export const widthOf = (text: string, size: number): number => text.length * size * 0.56;
