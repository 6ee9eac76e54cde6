import { document, element, escaped, vocabularies } from "./xml";

/** The texts of a workbook, each stored once and named by its number. */
export class SharedStrings {
  private readonly numbers = new Map<string, number>();
  private uses = 0;

  /** The number of a text, new or known. */
  numberOf(text: string): number {
    this.uses += 1;
    const known = this.numbers.get(text);
    if (known !== undefined) return known;
    this.numbers.set(text, this.numbers.size);
    return this.numbers.size - 1;
  }

  part(): string {
    const items = [...this.numbers.keys()].map((text) => element("si", {}, element("t", { "xml:space": "preserve" }, escaped(text))));
    return document(element("sst", { xmlns: vocabularies.sheet, count: this.uses, uniqueCount: items.length }, ...items));
  }
}
