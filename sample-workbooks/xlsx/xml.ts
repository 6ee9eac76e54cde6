type Attribute = string | number | boolean | undefined;

const named: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "\n": "&#10;" };

/** Text made safe for an attribute or the inside of an element. */
export const escaped = (text: string): string => text.replace(/[&<>"\n]/g, (sign) => named[sign] ?? sign);

/** One element with its attributes in the order given; those left undefined are left out, true and false become 1 and 0. */
export function element(name: string, attributes: Readonly<Record<string, Attribute>> = {}, ...inside: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(String(typeof value === "boolean" ? Number(value) : value))}"`)
    .join("");
  const content = inside.join("");
  return content === "" ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** A list element that carries its own count, and is left out when empty. */
export const counted = (name: string, items: readonly string[], attributes: Readonly<Record<string, Attribute>> = {}): string =>
  items.length === 0 ? "" : element(name, { count: items.length, ...attributes }, ...items);

export const document = (root: string): string => `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${root}`;

const office = "http://schemas.openxmlformats.org/officeDocument/2006";

/** The names by which the parts of a workbook refer to each other's vocabularies. */
export const vocabularies = {
  sheet: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
  relations: `${office}/relationships`,
  packageRelations: "http://schemas.openxmlformats.org/package/2006/relationships",
  contentTypes: "http://schemas.openxmlformats.org/package/2006/content-types",
  extendedProperties: `${office}/extended-properties`,
} as const;
