import { callsOurs, stored } from "./formula";
import { type Variant } from "./cell-part";
import { type TableSpec } from "./spec";
import { counted, document, element, escaped, vocabularies } from "./xml";

/** One Table. Its calculated columns hold the same formula as their cells, so that a new row continues them. */
export function tablePart({ name, ref, columns }: TableSpec, id: number, variant: Variant): string {
  const written = columns.map((column, number) => {
    const { formula } = column;
    const attributes = { id: number + 1, name: column.name };
    if (formula === undefined || (variant === "preview" && callsOurs(formula))) return element("tableColumn", attributes);
    const calculated = element("calculatedColumnFormula", { array: callsOurs(formula) ? true : undefined }, escaped(stored(formula)));
    return element("tableColumn", attributes, calculated);
  });
  const look = { name: "TableStyleLight1", showFirstColumn: false, showLastColumn: false, showRowStripes: false, showColumnStripes: false };
  return document(
    element(
      "table",
      { xmlns: vocabularies.sheet, id, name, displayName: name, ref, totalsRowShown: false },
      element("autoFilter", { ref }),
      counted("tableColumns", written),
      element("tableStyleInfo", look),
    ),
  );
}
