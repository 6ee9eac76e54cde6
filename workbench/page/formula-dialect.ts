import type { ICellData } from "@univerjs/core";
import type { BookName } from "../book";
import { outsideText, quotedSheet } from "../engine/formula-text";
import { withOwnNames } from "../engine/sheet-names";
import { withoutSpillReferences } from "../engine/spill-references";
import { withoutStructuredReferences, type Place, type PlacedTable } from "../engine/structured-references";

export interface Surroundings {
  readonly tables: readonly PlacedTable[];
  readonly names: readonly BookName[];
  /** The range that the formula in a cell fills: asked with the sheet's name and `B2`. */
  readonly spill: (sheet: string, address: string) => string | undefined;
}

/** What a cell keeps beside a formula that had to be translated, so that it can be shown and translated again as typed. */
export interface Translated {
  readonly typed: string;
  readonly translated: string;
}

/** A formula as the grid component understands it: no `Log[EC]`, no `B2#`, no name that only one sheet knows. */
export function inDialect(formula: string, place: Place, { tables, names, spill }: Surroundings): string {
  const plain = withoutStructuredReferences(formula, tables, place);
  const known = withOwnNames(withoutSpillReferences(plain, place.sheet, spill), place.sheet, names);
  return outsideText(known, (code) => code.replaceAll(quotedSheet(place.sheet), ""));
}

export function formulaData(typed: string, translated: string): Pick<ICellData, "f" | "custom"> {
  return { f: translated, custom: typed === translated ? null : ({ typed, translated } satisfies Translated) };
}

/** The formula as it was typed, where the cell still holds its translation. */
export function typedIn(cell: ICellData): Translated | undefined {
  const kept = cell.custom as Partial<Translated> | null | undefined;
  if (kept?.typed === undefined || kept.translated === undefined || cell.f !== kept.translated) return undefined;
  return { typed: kept.typed, translated: kept.translated };
}
