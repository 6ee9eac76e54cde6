import { type LogQuantity } from "../../src/index";
import { inEngineUnit, type LogCells } from "./log-cell";

/** What the person says about the log as a whole, for its formulas. */
export interface FormulaOptions {
  /** The band as a formula takes it: `"coir, medium"` or `{5.6,6.4,1.5,3}`; `undefined` while none is chosen. */
  readonly band: string | undefined;
  /** The meter shows EC as it is at the solution's temperature, so that every EC goes through ECAT25 first. */
  readonly uncompensated: boolean;
}

/** A column that can be put beside a log. */
export interface ComputedColumn {
  /** The words in its header cell; the log reader takes none of them for a reading, but for the two of EC at 25 C. */
  readonly header: string;
  /** What it tells, for the person who ticks it. */
  readonly about: string;
  readonly numberFormat: string;
  /** Every quantity of which a column has to be there. */
  readonly needs: readonly LogQuantity[];
  readonly formula: (row: RowText) => string;
}

/** The readings of one row as text of a formula, in the engine's units; `""` where the log has no such column. */
type RowText = (quantity: LogQuantity | "band") => string;

const call = (name: string, ...quantities: readonly (LogQuantity | "band")[]) => (row: RowText): string =>
  `RUNOFF.${name}(${quantities.map(row).join(",")})`;

/** Readings of a meter that does not compensate, brought to 25 C; the log reader takes these columns for the EC ones. */
export const compensatedColumns = {
  "input EC": {
    header: "Input EC at 25 C (mS/cm)", about: "feed EC, brought to 25 C", numberFormat: "0.00",
    needs: ["input EC", "solution temperature"], formula: (row: RowText): string => row("input EC"),
  },
  "runoff EC": {
    header: "Runoff EC at 25 C (mS/cm)", about: "runoff EC, brought to 25 C", numberFormat: "0.00",
    needs: ["runoff EC", "solution temperature"], formula: (row: RowText): string => row("runoff EC"),
  },
} as const satisfies Record<string, ComputedColumn>;

export const flagHeader = "Row flags";

export const computedColumns: readonly ComputedColumn[] = [
  {
    header: "Salt ratio", about: "runoff EC over feed EC", numberFormat: "0.00",
    needs: ["runoff EC", "input EC"], formula: call("SALTRATIO", "runoff EC", "input EC"),
  },
  {
    header: "pH shift", about: "runoff pH less feed pH", numberFormat: "+0.00;-0.00;0.00",
    needs: ["runoff pH", "input pH"], formula: call("PHSHIFT", "runoff pH", "input pH"),
  },
  {
    header: "Leaching fraction", about: "share of what was poured that drained", numberFormat: "0%",
    needs: ["runoff volume", "input volume"], formula: call("LEACHFRACTION", "runoff volume", "input volume"),
  },
  {
    header: "Salt kept (g)", about: "salt that this watering left in the pot", numberFormat: "0.00",
    needs: ["input EC", "input volume", "runoff EC", "runoff volume"],
    formula: call("SALTKEPT", "input EC", "input volume", "runoff EC", "runoff volume"),
  },
  {
    header: "Taken up per watering (L)", about: "poured less drained: the plant's and the air's share", numberFormat: "0.00",
    needs: ["input volume", "runoff volume"], formula: call("UPTAKE", "input volume", "runoff volume"),
  },
  {
    header: "VPD (kPa)", about: "how hard the air pulls water out of the leaf", numberFormat: "0.00",
    needs: ["air temperature", "humidity"], formula: call("VPD", "air temperature", "humidity"),
  },
  {
    header: flagHeader, about: "what of the row lies outside the limits", numberFormat: "General",
    needs: [], formula: call("ROWFLAG", "input pH", "input EC", "runoff pH", "runoff EC", "band"),
  },
];

/** The formula of one column for one row, with its equals sign. */
export function formulaFor({ formula }: ComputedColumn, cells: LogCells, { band, uncompensated }: FormulaOptions): string {
  const row: RowText = (quantity) => {
    if (quantity === "band") return band ?? '""';
    const cell = cells.get(quantity);
    if (cell === undefined) return '""';
    const temperature = cells.get("solution temperature");
    const text = inEngineUnit(cell);
    if (!quantity.endsWith("EC") || !uncompensated || temperature === undefined) return text;
    return `RUNOFF.ECAT25(${text},${inEngineUnit(temperature)})`;
  };
  return `=${formula(row)}`;
}

/** Why a column cannot be made from this log; `undefined` when it can. */
export function whatIsMissing(column: ComputedColumn, cells: LogCells, { band, uncompensated }: FormulaOptions): string | undefined {
  const needs = new Set(column.needs);
  if (column.header === flagHeader && !cells.has("runoff pH") && !cells.has("runoff EC")) return "needs a column of runoff pH or runoff EC";
  if (column.header === flagHeader && band === undefined) return "choose the medium first";
  const usesEc = column.header === flagHeader || column.needs.some((quantity) => quantity.endsWith("EC"));
  if (usesEc && uncompensated) needs.add("solution temperature");
  const missing = [...needs].filter((quantity) => !cells.has(quantity));
  return missing.length === 0 ? undefined : `needs a column of ${missing.join(" and ")}`;
}
