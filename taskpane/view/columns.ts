import { type ColumnReading, logQuantities, type LogUnit } from "../../src/index";
import { type Choices } from "../choices";
import { headerKeys } from "../column-answers";
import { type RootZone } from "../root-zone";
import { columnsWords as words } from "../words/columns";
import { type Actions } from "./actions";
import { chooser, fold, h } from "./elements";

const ecUnits: readonly LogUnit[] = ["mS/cm", "uS/cm", "dS/m", "mS/m", "ppm 500", "ppm 640", "ppm 700"];
const volumeUnits: readonly LogUnit[] = ["L", "mL", "gal", "qt", "fl oz"];

/** How each column was read and why, with a list to correct it. */
export function columnsSection({ reading }: RootZone, choices: Choices, actions: Actions): Node[] {
  const keys = headerKeys(reading.columns.map(({ header }) => header));
  const lines = (): HTMLElement[] => reading.columns.map((column) => {
    const { letters } = column;
    const key = keys[column.column] ?? "";
    const answer = (change: Choices["columns"][string]): void => {
      actions.choose({ columns: { ...choices.columns, [key]: change } });
    };
    return h(
      "li",
      {},
      h("div", { className: "fields" }, quantityField(column, letters, answer), unitField(column, letters, answer)),
      h("p", { className: "why" }, whyInWords(column)),
    );
  });
  const isRead = reading.rows.length > 0 || reading.questions.length > 0;
  return [fold("columns-fold", words.title, () => [h("ul", { className: "columns" }, ...lines())], !isRead)];
}

type Answer = (change: Choices["columns"][string]) => void;

function quantityField({ header, quantity }: ColumnReading, letters: string, answer: Answer): HTMLElement {
  const label = words.column(letters, header);
  return chooser(`column-${letters}`, label, logQuantities.map((value) => ({ value, text: value })), {
    value: quantity,
    onChoose: (value) => {
      answer({ quantity: logQuantities.find((each) => each === value) ?? "other" });
    },
  });
}

function unitField({ quantity, unit }: ColumnReading, letters: string, answer: Answer): HTMLElement | false {
  const units = unitsOf(quantity);
  if (units.length === 0) return false;
  const offered = unit === undefined || !units.includes(unit) ? ["" as const, ...units] : units;
  return chooser(
    `unit-${letters}`,
    words.unitOf(letters),
    offered.map((value) => ({ value, text: value === "" ? words.choose : value })),
    {
      value: unit ?? "",
      onChoose: (value) => {
        const chosen = units.find((each) => each === value);
        if (chosen !== undefined) answer({ quantity, unit: chosen });
      },
    },
  );
}

function unitsOf(quantity: ColumnReading["quantity"]): readonly LogUnit[] {
  if (quantity.endsWith("EC")) return ecUnits;
  if (quantity.endsWith("volume")) return volumeUnits;
  return quantity.endsWith("temperature") ? ["C", "F"] : [];
}

const whyInWords = ({ read, why }: ColumnReading): string => (read ? why : words.notRead(why));
